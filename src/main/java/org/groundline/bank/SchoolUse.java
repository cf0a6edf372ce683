package org.groundline.bank;

import java.util.List;
import java.util.Set;

/// How a school uses a bank.
///
/// @param own questions of its own; one with the id of a shipped question stands in its place
/// @param withdrawn the ids of questions that nobody is asked any more
/// @param jurisdictions the codes of the jurisdictions whose rules its students learn, such as `EU`
public record SchoolUse(List<Question> own, Set<String> withdrawn, Set<String> jurisdictions) {
    /// The bank as it is shipped: what holds in one jurisdiction alone is put to nobody.
    public static final SchoolUse AS_SHIPPED = new SchoolUse(List.of(), Set.of(), Set.of());

    public SchoolUse {
        own = List.copyOf(own);
        withdrawn = Set.copyOf(withdrawn);
        jurisdictions = Set.copyOf(jurisdictions);
    }

    /// Whether the school's students may be asked it.
    boolean asks(Question question) {
        return !withdrawn.contains(question.id())
                && question.jurisdiction().map(Jurisdiction::code).stream()
                        .allMatch(jurisdictions::contains);
    }
}
