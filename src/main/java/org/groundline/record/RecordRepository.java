package org.groundline.record;

import static org.groundline.database.schema.Tables.ANSWER;
import static org.groundline.database.schema.Tables.DEBRIEF;
import static org.groundline.database.schema.Tables.DEMONSTRATION;
import static org.groundline.database.schema.Tables.ITEM;
import static org.groundline.database.schema.Tables.MARK;
import static org.groundline.database.schema.Tables.POLICY;
import static org.groundline.database.schema.Tables.RESULT;
import static org.groundline.database.schema.Tables.REVERSAL;
import static org.groundline.database.schema.Tables.SCORING_RUN;
import static org.groundline.database.schema.Tables.SIGN_OFF;
import static org.groundline.database.schema.Tables.SITTING;
import static org.jooq.impl.DSL.coalesce;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.inline;
import static org.jooq.impl.DSL.notExists;
import static org.jooq.impl.DSL.selectCount;
import static org.jooq.impl.DSL.selectOne;

import org.groundline.bank.Frozen;
import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// Reads the evidence of any number of students at once: one statement a kind.
final class RecordRepository {
    private final DSLContext sql;
    private final UUID school;

    RecordRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// A piece of evidence and whose it is, in which module.
    record Evidence<T>(SubjectId subject, String module, T what) {}

    private static List<UUID> values(Collection<SubjectId> subjects) {
        return subjects.stream().map(SubjectId::value).toList();
    }

    private Condition countedSittingOf(Collection<SubjectId> subjects) {
        return SITTING.SCHOOL_ID
                .eq(school)
                .and(SITTING.SUBJECT_ID.in(values(subjects)))
                .and(SITTING.STAKES.in("progress", "final"))
                .and(SITTING.ANNULLED_AT.isNull());
    }

    List<Evidence<Attempt>> listAttempts(Collection<SubjectId> subjects) {
        var passMark = field("(({0} ->> 'passMark')::int)", Integer.class, POLICY.RULES);
        return sql.select(
                        SITTING.SUBJECT_ID,
                        SITTING.SCOPE,
                        SITTING.ID,
                        SITTING.HANDED_IN_AT,
                        passMark,
                        SCORING_RUN.HUNDREDTHS,
                        SCORING_RUN.POSSIBLE,
                        SCORING_RUN.PASSED)
                .from(SITTING)
                .join(RESULT)
                .on(RESULT.SCHOOL_ID.eq(SITTING.SCHOOL_ID), RESULT.SITTING_ID.eq(SITTING.ID))
                .join(SCORING_RUN)
                .on(SCORING_RUN.SCHOOL_ID.eq(RESULT.SCHOOL_ID), SCORING_RUN.ID.eq(RESULT.CURRENT))
                .join(POLICY)
                .on(
                        POLICY.SCHOOL_ID.eq(SITTING.SCHOOL_ID),
                        POLICY.VERSION.eq(SITTING.POLICY_VERSION))
                .where(countedSittingOf(subjects))
                .orderBy(SITTING.STARTED_AT, SITTING.ID)
                .fetch(
                        row ->
                                evidence(
                                        row,
                                        new Attempt(
                                                row.get(SITTING.ID),
                                                row.get(SITTING.HANDED_IN_AT),
                                                row.get(passMark),
                                                row.get(SCORING_RUN.HUNDREDTHS),
                                                row.get(SCORING_RUN.POSSIBLE),
                                                row.get(SCORING_RUN.PASSED))));
    }

    private static <T> Evidence<T> evidence(Record row, T what) {
        return new Evidence<>(
                new SubjectId(row.get(SITTING.SUBJECT_ID)), row.get(SITTING.SCOPE), what);
    }

    /// Returns the sittings that are open, by student and module.
    List<Evidence<UUID>> listOpen(Collection<SubjectId> subjects) {
        return sql.select(SITTING.SUBJECT_ID, SITTING.SCOPE, SITTING.ID)
                .from(SITTING)
                .where(countedSittingOf(subjects), SITTING.HANDED_IN_AT.isNull())
                .fetch(row -> evidence(row, row.get(SITTING.ID)));
    }

    /// Returns what must still be talked through.
    List<Evidence<TalkItem>> listToTalkThrough(Collection<SubjectId> subjects) {
        var talks =
                field(
                        selectCount()
                                .from(DEBRIEF)
                                .where(
                                        DEBRIEF.SCHOOL_ID.eq(school),
                                        DEBRIEF.ITEM_ID.eq(MARK.ITEM_ID)));
        return sql.select(
                        SITTING.SUBJECT_ID,
                        SITTING.SCOPE,
                        SITTING.ID,
                        ITEM.ID,
                        ITEM.TOPIC,
                        ITEM.SHOWN,
                        ITEM.LANGUAGE,
                        MARK.VERDICT,
                        coalesce(ANSWER.RAW, inline("")).as(ANSWER.RAW),
                        coalesce(MARK.MISCONCEPTION, inline("")).as(MARK.MISCONCEPTION),
                        talks)
                .from(SITTING)
                .join(RESULT)
                .on(RESULT.SCHOOL_ID.eq(SITTING.SCHOOL_ID), RESULT.SITTING_ID.eq(SITTING.ID))
                .join(MARK)
                .on(MARK.SCHOOL_ID.eq(RESULT.SCHOOL_ID), MARK.RUN_ID.eq(RESULT.CURRENT))
                .join(ITEM)
                .on(ITEM.SCHOOL_ID.eq(MARK.SCHOOL_ID), ITEM.ID.eq(MARK.ITEM_ID))
                .leftJoin(ANSWER)
                .on(ANSWER.SCHOOL_ID.eq(MARK.SCHOOL_ID), ANSWER.CLIENT_ID.eq(MARK.ANSWER_ID))
                .where(
                        countedSittingOf(subjects),
                        MARK.SAFETY_CRITICAL.isTrue(),
                        MARK.VERDICT.ne("right"),
                        notExists(
                                selectOne()
                                        .from(DEBRIEF)
                                        .where(
                                                DEBRIEF.SCHOOL_ID.eq(school),
                                                DEBRIEF.ITEM_ID.eq(MARK.ITEM_ID),
                                                DEBRIEF.OUTCOME.eq(
                                                        Debriefs.Outcome.EXPLAINED_BACK.word()))))
                .orderBy(SITTING.STARTED_AT, ITEM.POSITION)
                .fetch(
                        row ->
                                evidence(
                                        row,
                                        new TalkItem(
                                                row.get(ITEM.ID),
                                                row.get(SITTING.ID),
                                                row.get(ITEM.TOPIC),
                                                Frozen.readShown(row.get(ITEM.SHOWN).data()),
                                                row.get(ITEM.LANGUAGE),
                                                row.get(ANSWER.RAW),
                                                row.get(MARK.VERDICT),
                                                row.get(MARK.MISCONCEPTION),
                                                row.get(talks))));
    }

    /// A demonstration that was observed.
    record Observed(String demonstration, SubjectId observer, Instant at) {}

    List<Evidence<Observed>> listObserved(Collection<SubjectId> subjects) {
        return sql.select(
                        DEMONSTRATION.SUBJECT_ID,
                        DEMONSTRATION.DEMONSTRATION_,
                        DEMONSTRATION.OBSERVED_BY,
                        DEMONSTRATION.HAPPENED_AT)
                .from(DEMONSTRATION)
                .where(
                        DEMONSTRATION.SCHOOL_ID.eq(school),
                        DEMONSTRATION.SUBJECT_ID.in(values(subjects)))
                .orderBy(DEMONSTRATION.HAPPENED_AT)
                .fetch(
                        row ->
                                new Evidence<>(
                                        new SubjectId(row.value1()),
                                        "",
                                        new Observed(
                                                row.value2(),
                                                new SubjectId(row.value3()),
                                                row.value4())));
    }

    List<Evidence<SignOff>> listSignOffs(Collection<SubjectId> subjects) {
        return sql.select(SIGN_OFF.fields())
                .select(REVERSAL.REVERSED_BY, REVERSAL.HAPPENED_AT, REVERSAL.NOTE_ID)
                .from(SIGN_OFF)
                .leftJoin(REVERSAL)
                .on(REVERSAL.SCHOOL_ID.eq(SIGN_OFF.SCHOOL_ID), REVERSAL.SIGN_OFF_ID.eq(SIGN_OFF.ID))
                .where(SIGN_OFF.SCHOOL_ID.eq(school), SIGN_OFF.SUBJECT_ID.in(values(subjects)))
                .orderBy(SIGN_OFF.ENTERED_AT, SIGN_OFF.ID)
                .fetch(
                        row ->
                                new Evidence<>(
                                        new SubjectId(row.get(SIGN_OFF.SUBJECT_ID)),
                                        row.get(SIGN_OFF.MODULE),
                                        toSignOff(row)));
    }

    private static SignOff toSignOff(Record row) {
        Optional<SignOff.Reversal> reversal =
                Optional.ofNullable(row.get(REVERSAL.REVERSED_BY))
                        .map(
                                by ->
                                        new SignOff.Reversal(
                                                new SubjectId(by),
                                                row.get(REVERSAL.HAPPENED_AT),
                                                row.get(REVERSAL.NOTE_ID)));
        return new SignOff(
                row.get(SIGN_OFF.ID),
                row.get(SIGN_OFF.BASIS),
                new SubjectId(row.get(SIGN_OFF.INSTRUCTOR_ID)),
                row.get(SIGN_OFF.HAPPENED_AT),
                reversal);
    }
}
