package org.groundline.sitting;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.ledger.Foundation;
import org.groundline.school.Actor;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// Hands sittings in and has them marked, each once: by its student, or by the clock when its time
/// is over.
final class HandIn {
    private static final int OVERDUE_TOGETHER = 50;

    private final Foundation foundation;
    private final Scoring scoring;

    HandIn(Foundation foundation, Scoring scoring) {
        this.foundation = foundation;
        this.scoring = scoring;
    }

    /// Hands a sitting in for who asks; one that was handed in before stays as it is.
    void byStudent(DSLContext tx, Actor actor, Sitting.Facts sitting) {
        Optional<SubjectId> student = Optional.of(actor.subject());
        handIn(tx, actor.school().id(), sitting, foundation.now(), student);
    }

    /// Hands in what is overdue in a school, some sittings at most, and returns how many.
    int byClock(SchoolId school) {
        Instant now = foundation.now();
        return foundation.database().inSchool(school, tx -> byClock(tx, school, now));
    }

    private int byClock(DSLContext tx, SchoolId school, Instant now) {
        List<Sitting> overdue =
                new SittingRepository(tx, school).lockOverdue(now, OVERDUE_TOGETHER);
        for (Sitting sitting : overdue) {
            handIn(tx, school, sitting.facts(), deadlineOf(sitting), Optional.empty());
        }
        return overdue.size();
    }

    private void handIn(
            DSLContext tx,
            SchoolId school,
            Sitting.Facts facts,
            Instant at,
            Optional<SubjectId> student) {
        var rows = new SittingRepository(tx, school);
        if (rows.handInIfOpen(facts.id(), at, student.isPresent() ? "student" : "clock")) {
            rows.note(foundation.ids().next(), facts.id(), "handed in", student, foundation.now());
            scoring.score(tx, school, facts, "handed in");
        }
    }

    private static Instant deadlineOf(Sitting sitting) {
        return sitting instanceof Sitting.Open open
                ? open.deadline()
                        .orElseThrow(() -> new IllegalStateException("overdue without a deadline"))
                : sitting.facts().startedAt();
    }
}
