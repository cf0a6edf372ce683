package org.groundline.web.staff;

import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.School;
import org.groundline.web.Doors;
import org.groundline.web.request.Frame;
import org.groundline.web.staff.words.SharedWords;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// The choice of one intake, or all, above a table.
///
/// @param address of the page that is filtered
/// @param chosen the intake looked at; empty for all
public record IntakeFilter(
        String address, List<Intake> intakes, Optional<UUID> chosen, SharedWords words) {
    public IntakeFilter {
        intakes = List.copyOf(intakes);
    }

    /// The choice on this page.
    static IntakeFilter on(Frame frame, Doors doors, Actor actor, Optional<UUID> chosen) {
        School school = actor.school();
        return new IntakeFilter(
                frame.here(),
                doors.people().listIntakes(school),
                chosen,
                SharedWords.in(school.language()));
    }

    /// The name of the intake looked at, for the page on paper.
    public String chosenName() {
        return intakes.stream()
                .filter(intake -> chosen.filter(intake.id()::equals).isPresent())
                .map(Intake::name)
                .findFirst()
                .orElse(words.allIntakes());
    }
}
