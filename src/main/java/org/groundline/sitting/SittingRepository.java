package org.groundline.sitting;

import static org.groundline.database.schema.Tables.SEAT;
import static org.groundline.database.schema.Tables.SITTING;
import static org.groundline.database.schema.Tables.SITTING_EVENT;
import static org.jooq.impl.DSL.max;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;

import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// The rows of sittings, their seats and what happened to them.
final class SittingRepository {
    private final DSLContext sql;
    private final UUID school;

    SittingRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    void insert(Sitting.Open sitting) {
        Sitting.Facts facts = sitting.facts();
        sql.insertInto(SITTING)
                .set(SITTING.SCHOOL_ID, school)
                .set(SITTING.ID, facts.id())
                .set(SITTING.STAKES, facts.stakes().word())
                .set(SITTING.PAPER_ID, facts.paper())
                .set(SITTING.SUBJECT_ID, facts.subject().value())
                .set(SITTING.OPENING_ID, facts.opening().orElse(null))
                .set(SITTING.POLICY_VERSION, facts.policy())
                .set(SITTING.SCOPE, facts.scope())
                .set(SITTING.STARTED_AT, facts.startedAt())
                .set(SITTING.DEADLINE_AT, sitting.deadline().orElse(null))
                .execute();
    }

    Optional<Sitting> findSitting(UUID id) {
        return find(SITTING.ID.eq(id));
    }

    Optional<Sitting> findByOpening(UUID opening, SubjectId subject) {
        return find(
                SITTING.OPENING_ID
                        .eq(opening)
                        .and(SITTING.SUBJECT_ID.eq(subject.value()))
                        .and(SITTING.ANNULLED_AT.isNull()));
    }

    Optional<Sitting> findOpenPractice(SubjectId subject, String topic) {
        return find(
                SITTING.SUBJECT_ID
                        .eq(subject.value())
                        .and(SITTING.STAKES.eq(Stakes.PRACTICE.word()))
                        .and(SITTING.SCOPE.eq(topic))
                        .and(SITTING.HANDED_IN_AT.isNull())
                        .and(SITTING.ANNULLED_AT.isNull()));
    }

    private Optional<Sitting> find(Condition condition) {
        return sql.selectFrom(SITTING)
                .where(SITTING.SCHOOL_ID.eq(school), condition)
                .fetchOptional(SittingRepository::toSitting);
    }

    /// Returns a person's counted sittings, in the order they were begun.
    List<Sitting> listCounted(SubjectId subject) {
        return sql.selectFrom(SITTING)
                .where(
                        SITTING.SCHOOL_ID.eq(school),
                        SITTING.SUBJECT_ID.eq(subject.value()),
                        SITTING.STAKES.ne(Stakes.PRACTICE.word()),
                        SITTING.ANNULLED_AT.isNull())
                .orderBy(SITTING.STARTED_AT, SITTING.ID)
                .fetch(SittingRepository::toSitting);
    }

    /// Hands a sitting in; false if it was handed in or annulled before. Two clicks can't both win,
    /// and no answer on its way is missed: it holds the row until its commit.
    boolean handInIfOpen(UUID id, Instant at, String by) {
        return sql.update(SITTING)
                        .set(SITTING.HANDED_IN_AT, at)
                        .set(SITTING.HANDED_IN_BY, by)
                        .where(
                                SITTING.SCHOOL_ID.eq(school),
                                SITTING.ID.eq(id),
                                SITTING.HANDED_IN_AT.isNull(),
                                SITTING.ANNULLED_AT.isNull())
                        .execute()
                == 1;
    }

    /// Locks and returns the open sittings whose time is over, leaving out those that another
    /// server is handing in.
    List<Sitting> lockOverdue(Instant now, int most) {
        return sql.selectFrom(SITTING)
                .where(
                        SITTING.SCHOOL_ID.eq(school),
                        SITTING.DEADLINE_AT.lt(now),
                        SITTING.HANDED_IN_AT.isNull(),
                        SITTING.ANNULLED_AT.isNull())
                .orderBy(SITTING.ID)
                .limit(most)
                .forUpdate()
                .skipLocked()
                .fetch(SittingRepository::toSitting);
    }

    /// Returns the number of the seat that this log-in holds, if it is the newest of the sitting.
    Optional<Integer> findSeat(UUID sitting, String session) {
        return sql.select(SEAT.NUMBER, SEAT.SESSION)
                .from(SEAT)
                .where(SEAT.SCHOOL_ID.eq(school), SEAT.SITTING_ID.eq(sitting))
                .orderBy(SEAT.NUMBER.desc())
                .limit(1)
                .fetchOptional()
                .filter(row -> HexFormat.of().formatHex(row.value2()).equals(session))
                .map(row -> row.value1());
    }

    /// Opens the next seat of a sitting for a log-in and returns its number.
    int openSeat(UUID sitting, String session, Instant now) {
        Integer last =
                sql.select(max(SEAT.NUMBER))
                        .from(SEAT)
                        .where(SEAT.SCHOOL_ID.eq(school), SEAT.SITTING_ID.eq(sitting))
                        .fetchSingle()
                        .value1();
        int number = last == null ? 1 : last + 1;
        sql.insertInto(SEAT)
                .set(SEAT.SCHOOL_ID, school)
                .set(SEAT.SITTING_ID, sitting)
                .set(SEAT.NUMBER, number)
                .set(SEAT.SESSION, HexFormat.of().parseHex(session))
                .set(SEAT.OPENED_AT, now)
                .execute();
        return number;
    }

    /// Whether a seat of a sitting was opened by this log-in.
    boolean isSeatOf(UUID sitting, int number, String session) {
        return sql.fetchExists(
                SEAT,
                SEAT.SCHOOL_ID.eq(school),
                SEAT.SITTING_ID.eq(sitting),
                SEAT.NUMBER.eq(number),
                SEAT.SESSION.eq(HexFormat.of().parseHex(session)));
    }

    void note(UUID id, UUID sitting, String kind, Optional<SubjectId> actor, Instant now) {
        sql.insertInto(SITTING_EVENT)
                .set(SITTING_EVENT.SCHOOL_ID, school)
                .set(SITTING_EVENT.ID, id)
                .set(SITTING_EVENT.SITTING_ID, sitting)
                .set(SITTING_EVENT.AT, now)
                .set(SITTING_EVENT.KIND, kind)
                .set(SITTING_EVENT.ACTOR_ID, actor.map(SubjectId::value).orElse(null))
                .execute();
    }

    private static Sitting toSitting(Record row) {
        var facts =
                new Sitting.Facts(
                        row.get(SITTING.ID),
                        Stakes.ofWord(row.get(SITTING.STAKES)),
                        row.get(SITTING.PAPER_ID),
                        new SubjectId(row.get(SITTING.SUBJECT_ID)),
                        Optional.ofNullable(row.get(SITTING.OPENING_ID)),
                        row.get(SITTING.POLICY_VERSION),
                        row.get(SITTING.SCOPE),
                        row.get(SITTING.STARTED_AT));
        Instant annulled = row.get(SITTING.ANNULLED_AT);
        if (annulled != null) {
            return new Sitting.Annulled(facts, annulled);
        }
        Instant handedIn = row.get(SITTING.HANDED_IN_AT);
        return handedIn == null
                ? new Sitting.Open(facts, Optional.ofNullable(row.get(SITTING.DEADLINE_AT)))
                : new Sitting.HandedIn(facts, handedIn, row.get(SITTING.HANDED_IN_BY));
    }
}
