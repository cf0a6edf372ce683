package org.groundline.authoring;

import static org.groundline.database.schema.Tables.BANK_EVENT;
import static org.groundline.database.schema.Tables.EDITION;
import static org.groundline.database.schema.Tables.JURISDICTION_CHOICE;
import static org.groundline.database.schema.Tables.OWN_MISCONCEPTION;
import static org.groundline.database.schema.Tables.OWN_SOURCE;
import static org.groundline.database.schema.Tables.REMARK;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// Editions, what happened to them, and what people write about them.
final class EditionRepository {
    private final DSLContext sql;
    private final UUID school;

    EditionRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// A count that grows with everything that happens to the school's bank: each event, each entry
    /// of its lists, each choice of a jurisdiction.
    int countChanges() {
        return sql.select(
                        countOf(BANK_EVENT, BANK_EVENT.SCHOOL_ID)
                                .plus(countOf(OWN_MISCONCEPTION, OWN_MISCONCEPTION.SCHOOL_ID))
                                .plus(countOf(OWN_SOURCE, OWN_SOURCE.SCHOOL_ID))
                                .plus(countOf(JURISDICTION_CHOICE, JURISDICTION_CHOICE.SCHOOL_ID)))
                .fetchSingle()
                .value1();
    }

    private Field<Integer> countOf(Table<?> table, Field<UUID> schoolId) {
        return DSL.field(DSL.selectCount().from(table).where(schoolId.eq(school)));
    }

    List<Edition> listEditions() {
        return editions(DSL.noCondition());
    }

    List<Edition> listEditions(String question) {
        return editions(EDITION.QUESTION_ID.eq(question));
    }

    Optional<Edition> findEdition(UUID id) {
        return editions(EDITION.ID.eq(id)).stream().findFirst();
    }

    private List<Edition> editions(Condition condition) {
        return sql.selectFrom(EDITION)
                .where(EDITION.SCHOOL_ID.eq(school), condition)
                .orderBy(EDITION.QUESTION_ID, EDITION.NUMBER)
                .fetch(EditionRepository::toEdition);
    }

    private static Edition toEdition(Record row) {
        return new Edition(
                row.get(EDITION.ID),
                row.get(EDITION.QUESTION_ID),
                row.get(EDITION.NUMBER),
                row.get(EDITION.TEXT),
                Optional.ofNullable(row.get(EDITION.VERSION)),
                Optional.ofNullable(row.get(EDITION.PREDECESSOR))
                        .map(v -> new Edition.Origin(v, Change.ofWord(row.get(EDITION.CHANGE)))),
                new SubjectId(row.get(EDITION.WRITTEN_BY)),
                row.get(EDITION.WRITTEN_AT));
    }

    void insert(Edition edition) {
        sql.insertInto(EDITION)
                .set(EDITION.SCHOOL_ID, school)
                .set(EDITION.ID, edition.id())
                .set(EDITION.QUESTION_ID, edition.questionId())
                .set(EDITION.NUMBER, edition.number())
                .set(EDITION.TEXT, edition.text())
                .set(EDITION.VERSION, edition.version().orElse(null))
                .set(
                        EDITION.PREDECESSOR,
                        edition.origin().map(Edition.Origin::version).orElse(null))
                .set(EDITION.CHANGE, edition.origin().map(o -> o.change().word()).orElse(null))
                .set(EDITION.WRITTEN_BY, edition.author().value())
                .set(EDITION.WRITTEN_AT, edition.writtenAt())
                .execute();
    }

    List<Event> listEvents() {
        return events(DSL.noCondition());
    }

    List<Event> listEvents(String question) {
        return events(BANK_EVENT.QUESTION_ID.eq(question));
    }

    private List<Event> events(Condition condition) {
        return sql.selectFrom(BANK_EVENT)
                .where(BANK_EVENT.SCHOOL_ID.eq(school), condition)
                .orderBy(BANK_EVENT.QUESTION_ID, BANK_EVENT.POSITION)
                .fetch(EditionRepository::toEvent);
    }

    private static Event toEvent(Record row) {
        return new Event(
                row.get(BANK_EVENT.ID),
                kind(row.get(BANK_EVENT.KIND)),
                row.get(BANK_EVENT.QUESTION_ID),
                Optional.ofNullable(row.get(BANK_EVENT.EDITION_ID)),
                Optional.ofNullable(row.get(BANK_EVENT.VALID_FROM))
                        .map(
                                from ->
                                        new Event.Validity(
                                                from,
                                                Optional.ofNullable(
                                                        row.get(BANK_EVENT.VALID_UNTIL)))),
                new SubjectId(row.get(BANK_EVENT.ACTOR_ID)),
                row.get(BANK_EVENT.AT),
                Optional.ofNullable(row.get(BANK_EVENT.REMARK_ID)));
    }

    private static Event.Kind kind(String word) {
        return Arrays.stream(Event.Kind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("unknown kind of event: " + word));
    }

    void insert(Event event) {
        sql.insertInto(BANK_EVENT)
                .set(BANK_EVENT.SCHOOL_ID, school)
                .set(BANK_EVENT.ID, event.id())
                .set(BANK_EVENT.KIND, event.kind().word())
                .set(BANK_EVENT.QUESTION_ID, event.questionId())
                .set(BANK_EVENT.EDITION_ID, event.edition().orElse(null))
                .set(BANK_EVENT.VALID_FROM, event.validity().map(Event.Validity::from).orElse(null))
                .set(
                        BANK_EVENT.VALID_UNTIL,
                        event.validity().flatMap(Event.Validity::until).orElse(null))
                .set(BANK_EVENT.ACTOR_ID, event.actor().value())
                .set(BANK_EVENT.AT, event.at())
                .set(BANK_EVENT.REMARK_ID, event.remark().orElse(null))
                .execute();
    }

    List<Remark> listRemarks(String question) {
        return sql.selectFrom(REMARK)
                .where(REMARK.SCHOOL_ID.eq(school), REMARK.QUESTION_ID.eq(question))
                .orderBy(REMARK.POSITION)
                .fetch(
                        row ->
                                new Remark(
                                        row.get(REMARK.ID),
                                        row.get(REMARK.QUESTION_ID),
                                        Optional.ofNullable(row.get(REMARK.EDITION_ID)),
                                        new SubjectId(row.get(REMARK.WRITTEN_BY)),
                                        row.get(REMARK.WRITTEN_AT),
                                        row.get(REMARK.TEXT)));
    }

    void insert(Remark remark) {
        sql.insertInto(REMARK)
                .set(REMARK.SCHOOL_ID, school)
                .set(REMARK.ID, remark.id())
                .set(REMARK.QUESTION_ID, remark.questionId())
                .set(REMARK.EDITION_ID, remark.edition().orElse(null))
                .set(REMARK.WRITTEN_BY, remark.author().value())
                .set(REMARK.WRITTEN_AT, remark.writtenAt())
                .set(REMARK.TEXT, remark.text())
                .execute();
    }
}
