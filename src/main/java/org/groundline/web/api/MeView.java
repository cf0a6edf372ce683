package org.groundline.web.api;

import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.Person;
import org.groundline.school.School;

import java.util.List;

/// Who is asking.
record MeView(
        PersonView person, SchoolView school, List<IntakeView> intakes, LanguagesView questions) {
    /// @param zone IANA name
    /// @param language BCP 47
    record SchoolView(String code, String name, String zone, String language) {}

    /// In which language the person is asked.
    ///
    /// @param language BCP 47
    /// @param choice the languages to choose from
    record LanguagesView(String language, List<String> choice) {}

    static MeView of(Actor actor, Person person, List<Intake> intakes, LanguagesView questions) {
        School school = actor.school();
        return new MeView(
                PersonView.of(person, actor.roles()),
                new SchoolView(
                        school.code(), school.name(), school.zone().getId(), school.language()),
                intakes.stream().map(IntakeView::of).toList(),
                questions);
    }
}
