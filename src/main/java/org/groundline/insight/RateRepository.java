package org.groundline.insight;

import static org.groundline.database.schema.Tables.INTAKE_MEMBER;
import static org.groundline.database.schema.Tables.MARK;
import static org.groundline.database.schema.Tables.POLICY;
import static org.groundline.database.schema.Tables.RESULT;
import static org.groundline.database.schema.Tables.SITTING;
import static org.jooq.impl.DSL.count;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.noCondition;
import static org.jooq.impl.DSL.select;
import static org.jooq.impl.DSL.sum;

import org.groundline.database.SchoolId;
import org.jooq.Condition;
import org.jooq.DSLContext;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// Sums of marks for rates.
final class RateRepository {
    private final DSLContext sql;
    private final UUID school;

    RateRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// One student's marks in one topic, in the first counted sitting of that topic's module.
    ///
    /// @param passMark in hundredths of a percent, of the policy it was taken under
    record FirstMarks(
            String topic, int items, int right, int hundredths, int possible, int passMark) {}

    List<FirstMarks> listFirstMarks(Optional<UUID> intake) {
        var first =
                select(SITTING.SCHOOL_ID, SITTING.ID, SITTING.POLICY_VERSION)
                        .distinctOn(SITTING.SUBJECT_ID, SITTING.SCOPE)
                        .from(SITTING)
                        .where(
                                SITTING.SCHOOL_ID.eq(school),
                                SITTING.STAKES.in("progress", "final"),
                                SITTING.HANDED_IN_AT.isNotNull(),
                                SITTING.ANNULLED_AT.isNull(),
                                memberOf(intake))
                        .orderBy(SITTING.SUBJECT_ID, SITTING.SCOPE, SITTING.STARTED_AT, SITTING.ID)
                        .asTable("first");
        var passMark = field("(({0} ->> 'passMark')::int)", Integer.class, POLICY.RULES);
        var right = count().filterWhere(MARK.VERDICT.eq("right"));
        return sql.select(
                        MARK.TOPIC,
                        count(),
                        right,
                        sum(MARK.HUNDREDTHS),
                        sum(MARK.POSSIBLE),
                        passMark)
                .from(first)
                .join(RESULT)
                .on(
                        RESULT.SCHOOL_ID.eq(first.field(SITTING.SCHOOL_ID)),
                        RESULT.SITTING_ID.eq(first.field(SITTING.ID)))
                .join(MARK)
                .on(MARK.SCHOOL_ID.eq(RESULT.SCHOOL_ID), MARK.RUN_ID.eq(RESULT.CURRENT))
                .join(POLICY)
                .on(
                        POLICY.SCHOOL_ID.eq(RESULT.SCHOOL_ID),
                        POLICY.VERSION.eq(first.field(SITTING.POLICY_VERSION)))
                .groupBy(MARK.RUN_ID, MARK.TOPIC, passMark)
                .fetch(
                        row ->
                                new FirstMarks(
                                        row.value1(),
                                        row.value2(),
                                        row.value3(),
                                        row.value4().intValueExact(),
                                        row.value5().intValueExact(),
                                        row.value6()));
    }

    private Condition memberOf(Optional<UUID> intake) {
        return intake.<Condition>map(
                        id ->
                                SITTING.SUBJECT_ID.in(
                                        select(INTAKE_MEMBER.SUBJECT_ID)
                                                .from(INTAKE_MEMBER)
                                                .where(
                                                        INTAKE_MEMBER.SCHOOL_ID.eq(school),
                                                        INTAKE_MEMBER.INTAKE_ID.eq(id))))
                .orElse(noCondition());
    }
}
