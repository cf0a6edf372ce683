package org.groundline.sitting;

import static org.groundline.database.schema.Tables.ANSWER;
import static org.groundline.database.schema.Tables.FLAG;

import org.groundline.database.SchoolId;
import org.groundline.sitting.WaitingAnswer.AnswerId;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;

/// The rows of answers: added, read, never changed.
final class AnswerRepository {
    /// Keeps what may be kept. A row of the answer does not come back when its sitting is handed
    /// in, annulled or over, when it is not this person's, when the item is not on its paper, or
    /// when the answer was kept before. The sittings are locked against a hand-in for the length of
    /// the statement, in the order of their keys.
    private static final String INSERT =
            """
            insert into answer (school_id, client_id, sitting_id, item_id, stakes, seat, sequence, client_time,
                                received_at, raw, reading)
            select a.school_id, a.client_id, s.id, i.id, s.stakes, a.seat, a.sequence, a.client_time,
                   a.received_at, a.raw, a.reading
            from unnest(?::uuid[], ?::uuid[], ?::uuid[], ?::uuid[], ?::uuid[], ?::int[], ?::int[], ?::timestamptz[],
                        ?::timestamptz[], ?::text[], ?::text[])
                 as a (school_id, client_id, sitting_id, subject_id, item_id, seat, sequence, client_time,
                       received_at, raw, reading)
            join sitting s on s.school_id = a.school_id and s.id = a.sitting_id and s.subject_id = a.subject_id
                          and s.handed_in_at is null and s.annulled_at is null
                          and (s.deadline_at is null or a.received_at <= s.deadline_at)
            join item i on i.school_id = a.school_id and i.id = a.item_id and i.paper_id = s.paper_id
            join seat t on t.school_id = a.school_id and t.sitting_id = s.id and t.number = a.seat
            order by s.school_id, s.id
            for share of s
            on conflict do nothing
            returning school_id, client_id
            """;

    private final DSLContext sql;

    AnswerRepository(DSLContext sql) {
        this.sql = sql;
    }

    /// Keeps the answers of several schools in one statement and returns the ids of those that were
    /// kept now.
    Set<AnswerId> insert(List<WaitingAnswer> answers) {
        var kept =
                sql.fetch(
                        INSERT,
                        uuids(answers, w -> w.school().value()),
                        uuids(answers, w -> w.given().clientId()),
                        uuids(answers, WaitingAnswer::sitting),
                        uuids(answers, w -> w.subject().value()),
                        uuids(answers, w -> w.given().item()),
                        answers.stream().map(w -> w.given().seat()).toArray(Integer[]::new),
                        answers.stream().map(w -> w.given().sequence()).toArray(Integer[]::new),
                        answers.stream()
                                .map(AnswerRepository::clientTime)
                                .toArray(OffsetDateTime[]::new),
                        answers.stream()
                                .map(w -> w.given().receivedAt().atOffset(ZoneOffset.UTC))
                                .toArray(OffsetDateTime[]::new),
                        answers.stream().map(w -> w.given().raw()).toArray(String[]::new),
                        answers.stream().map(WaitingAnswer::reading).toArray(String[]::new));
        return new HashSet<>(
                kept.map(row -> new AnswerId(row.get(0, UUID.class), row.get(1, UUID.class))));
    }

    private static UUID[] uuids(List<WaitingAnswer> answers, Function<WaitingAnswer, UUID> part) {
        return answers.stream().map(part).toArray(UUID[]::new);
    }

    private static @Nullable OffsetDateTime clientTime(WaitingAnswer waiting) {
        return waiting.given().clientTime().map(t -> t.atOffset(ZoneOffset.UTC)).orElse(null);
    }

    Optional<KeptAnswer> findAnswer(SchoolId school, UUID clientId) {
        return sql.selectFrom(ANSWER)
                .where(ANSWER.SCHOOL_ID.eq(school.value()), ANSWER.CLIENT_ID.eq(clientId))
                .fetchOptional(AnswerRepository::toAnswer);
    }

    /// Returns the answer that counts for each item of a sitting: the last one by seat, sequence
    /// and arrival.
    Map<UUID, KeptAnswer> countingAnswers(SchoolId school, UUID sitting) {
        Map<UUID, KeptAnswer> last = new LinkedHashMap<>();
        sql.selectFrom(ANSWER)
                .where(ANSWER.SCHOOL_ID.eq(school.value()), ANSWER.SITTING_ID.eq(sitting))
                .orderBy(ANSWER.SEAT, ANSWER.SEQUENCE, ANSWER.RECEIVED_AT, ANSWER.CLIENT_ID)
                .forEach(row -> last.put(row.getItemId(), toAnswer(row)));
        return last;
    }

    private static KeptAnswer toAnswer(Record row) {
        return new KeptAnswer(
                row.get(ANSWER.CLIENT_ID),
                row.get(ANSWER.ITEM_ID),
                row.get(ANSWER.SEAT),
                row.get(ANSWER.SEQUENCE),
                row.get(ANSWER.RECEIVED_AT),
                row.get(ANSWER.RAW),
                row.get(ANSWER.READING));
    }

    Set<UUID> listFlags(SchoolId school, UUID sitting) {
        return sql.select(FLAG.ITEM_ID)
                .from(FLAG)
                .where(FLAG.SCHOOL_ID.eq(school.value()), FLAG.SITTING_ID.eq(sitting))
                .fetchSet(FLAG.ITEM_ID);
    }

    void flag(SchoolId school, UUID sitting, UUID item) {
        sql.insertInto(FLAG)
                .set(FLAG.SCHOOL_ID, school.value())
                .set(FLAG.SITTING_ID, sitting)
                .set(FLAG.ITEM_ID, item)
                .onConflictDoNothing()
                .execute();
    }

    void unflag(SchoolId school, UUID sitting, UUID item) {
        sql.deleteFrom(FLAG)
                .where(
                        FLAG.SCHOOL_ID.eq(school.value()),
                        FLAG.SITTING_ID.eq(sitting),
                        FLAG.ITEM_ID.eq(item))
                .execute();
    }
}
