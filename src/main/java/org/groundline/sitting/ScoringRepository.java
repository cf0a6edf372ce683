package org.groundline.sitting;

import static org.groundline.database.schema.Tables.MARK;
import static org.groundline.database.schema.Tables.RESULT;
import static org.groundline.database.schema.Tables.SCORING_RUN;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// The rows of scoring runs, marks and which run counts.
final class ScoringRepository {
    private final DSLContext sql;
    private final UUID school;

    ScoringRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// One marking of one sitting.
    ///
    /// @param version of the rule of marking, see [Marking]
    record Run(
            UUID id,
            UUID sitting,
            int version,
            Instant at,
            String reason,
            int hundredths,
            int possible,
            boolean passed) {}

    /// The mark of one item of a run.
    record MarkedItem(Item item, Mark mark, Optional<UUID> answer) {}

    void insert(Run run, SubjectId subject, List<MarkedItem> marks) {
        sql.insertInto(SCORING_RUN)
                .set(SCORING_RUN.SCHOOL_ID, school)
                .set(SCORING_RUN.ID, run.id())
                .set(SCORING_RUN.SITTING_ID, run.sitting())
                .set(SCORING_RUN.SCORING_VERSION, run.version())
                .set(SCORING_RUN.RUN_AT, run.at())
                .set(SCORING_RUN.REASON, run.reason())
                .set(SCORING_RUN.HUNDREDTHS, run.hundredths())
                .set(SCORING_RUN.POSSIBLE, run.possible())
                .set(SCORING_RUN.PASSED, run.passed())
                .execute();
        sql.batch(marks.stream().map(m -> markOf(run, subject, m)).toList()).execute();
        sql.insertInto(RESULT)
                .set(RESULT.SCHOOL_ID, school)
                .set(RESULT.SITTING_ID, run.sitting())
                .set(RESULT.CURRENT, run.id())
                .onConflict(RESULT.SCHOOL_ID, RESULT.SITTING_ID)
                .doUpdate()
                .set(RESULT.CURRENT, run.id())
                .execute();
    }

    private org.jooq.Query markOf(Run run, SubjectId subject, MarkedItem marked) {
        Mark mark = marked.mark();
        return sql.insertInto(MARK)
                .set(MARK.SCHOOL_ID, school)
                .set(MARK.RUN_ID, run.id())
                .set(MARK.ITEM_ID, marked.item().id())
                .set(MARK.SUBJECT_ID, subject.value())
                .set(MARK.TOPIC, marked.item().topic())
                .set(MARK.SAFETY_CRITICAL, marked.item().safetyCritical())
                .set(MARK.HUNDREDTHS, mark.hundredths())
                .set(MARK.POSSIBLE, mark.possible())
                .set(MARK.VERDICT, mark.verdict().word())
                .set(MARK.MISCONCEPTION, mark.belief().map(b -> b.id()).orElse(null))
                .set(MARK.ANSWER_ID, marked.answer().orElse(null));
    }

    /// Returns the run that counts for a sitting.
    Optional<Run> findCurrent(UUID sitting) {
        return sql.select(SCORING_RUN.fields())
                .from(RESULT)
                .join(SCORING_RUN)
                .on(SCORING_RUN.SCHOOL_ID.eq(RESULT.SCHOOL_ID), SCORING_RUN.ID.eq(RESULT.CURRENT))
                .where(RESULT.SCHOOL_ID.eq(school), RESULT.SITTING_ID.eq(sitting))
                .fetchOptional(
                        row ->
                                new Run(
                                        row.get(SCORING_RUN.ID),
                                        row.get(SCORING_RUN.SITTING_ID),
                                        row.get(SCORING_RUN.SCORING_VERSION),
                                        row.get(SCORING_RUN.RUN_AT),
                                        row.get(SCORING_RUN.REASON),
                                        row.get(SCORING_RUN.HUNDREDTHS),
                                        row.get(SCORING_RUN.POSSIBLE),
                                        row.get(SCORING_RUN.PASSED)));
    }
}
