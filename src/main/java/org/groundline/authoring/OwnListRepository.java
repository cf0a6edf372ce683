package org.groundline.authoring;

import static org.groundline.database.schema.Tables.JURISDICTION_CHOICE;
import static org.groundline.database.schema.Tables.OWN_MISCONCEPTION;
import static org.groundline.database.schema.Tables.OWN_SOURCE;

import org.groundline.bank.Misconception;
import org.groundline.bank.OwnLists;
import org.groundline.bank.Source;
import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;
import org.jooq.Record;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/// What a school's own questions refer to, and whose air law it teaches.
final class OwnListRepository {
    private final DSLContext sql;
    private final UUID school;

    OwnListRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    OwnLists lists() {
        return new OwnLists(misconceptions(), sources());
    }

    private List<Misconception> misconceptions() {
        return sql.selectDistinct(
                        OWN_MISCONCEPTION.ID,
                        OWN_MISCONCEPTION.WRONG,
                        OWN_MISCONCEPTION.RIGHT,
                        OWN_MISCONCEPTION.FEEDBACK)
                .on(OWN_MISCONCEPTION.ID)
                .from(OWN_MISCONCEPTION)
                .where(OWN_MISCONCEPTION.SCHOOL_ID.eq(school))
                .orderBy(OWN_MISCONCEPTION.ID, OWN_MISCONCEPTION.NUMBER.desc())
                .fetch(
                        row ->
                                new Misconception(
                                        row.get(OWN_MISCONCEPTION.ID),
                                        row.get(OWN_MISCONCEPTION.WRONG),
                                        row.get(OWN_MISCONCEPTION.RIGHT),
                                        row.get(OWN_MISCONCEPTION.FEEDBACK)));
    }

    private List<Source> sources() {
        return sql.selectDistinct(
                        OWN_SOURCE.ID,
                        OWN_SOURCE.TITLE,
                        OWN_SOURCE.PUBLISHER,
                        OWN_SOURCE.YEAR,
                        OWN_SOURCE.READ)
                .on(OWN_SOURCE.ID)
                .from(OWN_SOURCE)
                .where(OWN_SOURCE.SCHOOL_ID.eq(school))
                .orderBy(OWN_SOURCE.ID, OWN_SOURCE.NUMBER.desc())
                .fetch(OwnListRepository::toSource);
    }

    private static Source toSource(Record row) {
        return new Source(
                row.get(OWN_SOURCE.ID),
                row.get(OWN_SOURCE.TITLE),
                row.get(OWN_SOURCE.PUBLISHER),
                row.get(OWN_SOURCE.YEAR),
                Arrays.stream(Source.Read.values())
                        .filter(read -> read.word().equals(row.get(OWN_SOURCE.READ)))
                        .findFirst()
                        .orElseThrow());
    }

    void insert(Misconception idea, SubjectId by, Instant now) {
        sql.insertInto(OWN_MISCONCEPTION)
                .set(OWN_MISCONCEPTION.SCHOOL_ID, school)
                .set(OWN_MISCONCEPTION.ID, idea.id())
                .set(
                        OWN_MISCONCEPTION.NUMBER,
                        1
                                + sql.fetchCount(
                                        OWN_MISCONCEPTION,
                                        OWN_MISCONCEPTION.SCHOOL_ID.eq(school),
                                        OWN_MISCONCEPTION.ID.eq(idea.id())))
                .set(OWN_MISCONCEPTION.WRONG, idea.wrong())
                .set(OWN_MISCONCEPTION.RIGHT, idea.right())
                .set(OWN_MISCONCEPTION.FEEDBACK, idea.feedback())
                .set(OWN_MISCONCEPTION.ENTERED_BY, by.value())
                .set(OWN_MISCONCEPTION.ENTERED_AT, now)
                .execute();
    }

    void insert(Source source, SubjectId by, Instant now) {
        sql.insertInto(OWN_SOURCE)
                .set(OWN_SOURCE.SCHOOL_ID, school)
                .set(OWN_SOURCE.ID, source.id())
                .set(
                        OWN_SOURCE.NUMBER,
                        1
                                + sql.fetchCount(
                                        OWN_SOURCE,
                                        OWN_SOURCE.SCHOOL_ID.eq(school),
                                        OWN_SOURCE.ID.eq(source.id())))
                .set(OWN_SOURCE.TITLE, source.title())
                .set(OWN_SOURCE.PUBLISHER, source.publisher())
                .set(OWN_SOURCE.YEAR, source.year())
                .set(OWN_SOURCE.READ, source.read().word())
                .set(OWN_SOURCE.ENTERED_BY, by.value())
                .set(OWN_SOURCE.ENTERED_AT, now)
                .execute();
    }

    Optional<AirLaw.Choice> findChoice() {
        return sql.selectFrom(JURISDICTION_CHOICE)
                .where(JURISDICTION_CHOICE.SCHOOL_ID.eq(school))
                .orderBy(JURISDICTION_CHOICE.POSITION.desc())
                .limit(1)
                .fetchOptional(
                        row ->
                                new AirLaw.Choice(
                                        row.get(JURISDICTION_CHOICE.COUNTRY),
                                        Set.of(row.get(JURISDICTION_CHOICE.PACKS))));
    }

    void insert(UUID id, AirLaw.Choice choice, SubjectId by, Instant now) {
        sql.insertInto(JURISDICTION_CHOICE)
                .set(JURISDICTION_CHOICE.SCHOOL_ID, school)
                .set(JURISDICTION_CHOICE.ID, id)
                .set(JURISDICTION_CHOICE.COUNTRY, choice.country())
                .set(
                        JURISDICTION_CHOICE.PACKS,
                        choice.packs().stream().sorted().toArray(String[]::new))
                .set(JURISDICTION_CHOICE.CHOSEN_BY, by.value())
                .set(JURISDICTION_CHOICE.CHOSEN_AT, now)
                .execute();
    }
}
