package org.groundline.authoring;

import org.groundline.bank.Question;
import org.groundline.database.SubjectId;

import java.util.List;
import java.util.Optional;

/// All that a school knows about one question.
///
/// @param shipped the question that came with the program under this id
/// @param asked the question that students are asked today
/// @param editions the newest last
/// @param events all of them, in order
public record Dossier(
        String id,
        Optional<Question> shipped,
        Optional<Question> asked,
        List<Stand> editions,
        boolean withdrawn,
        List<Event> events,
        List<Remark> remarks) {
    public Dossier {
        editions = List.copyOf(editions);
        events = List.copyOf(events);
        remarks = List.copyOf(remarks);
    }

    /// An edition and where it stands.
    ///
    /// @param reviewer who approved it or sent it back
    /// @param question what its text reads as today; empty where it has errors
    public record Stand(
            Edition edition,
            State state,
            Optional<Event.Validity> validity,
            Optional<SubjectId> reviewer,
            Optional<Question> question) {}

    public Optional<Stand> latest() {
        return editions.isEmpty() ? Optional.empty() : Optional.of(editions.getLast());
    }
}
