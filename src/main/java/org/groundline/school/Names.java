package org.groundline.school;

import java.text.Collator;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/// Sorts people by name as readers of the school's language expect; the database sorts by code
/// points only.
final class Names {
    private Names() {}

    static List<Person> sorted(List<Person> people, School school) {
        Collator collator = Collator.getInstance(Locale.forLanguageTag(school.language()));
        return people.stream()
                .sorted(
                        Comparator.comparing(Person::familyName, collator::compare)
                                .thenComparing(Person::givenName, collator::compare))
                .toList();
    }
}
