package org.groundline.school;

import static org.groundline.database.schema.Tables.SCHOOL;
import static org.groundline.database.schema.Tables.SET_UP_LINK;
import static org.jooq.Records.mapping;

import org.groundline.database.SchoolId;
import org.jooq.DSLContext;
import org.jooq.Record5;
import org.jooq.SelectJoinStep;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// The tables that belong to no school.
final class SchoolRepository {
    private final DSLContext sql;

    SchoolRepository(DSLContext sql) {
        this.sql = sql;
    }

    int insert(School school, Instant now) {
        return sql.insertInto(SCHOOL)
                .set(SCHOOL.ID, school.id().value())
                .set(SCHOOL.CODE, school.code())
                .set(SCHOOL.NAME, school.name())
                .set(SCHOOL.ZONE, school.zone().getId())
                .set(SCHOOL.LANGUAGE, school.language())
                .set(SCHOOL.CREATED_AT, now)
                .execute();
    }

    Optional<School> findByCode(String code) {
        return schools()
                .where(SCHOOL.CODE.eq(code))
                .fetchOptional(mapping(SchoolRepository::toSchool));
    }

    List<School> listAll() {
        return schools().orderBy(SCHOOL.CODE).fetch(mapping(SchoolRepository::toSchool));
    }

    private SelectJoinStep<Record5<UUID, String, String, String, String>> schools() {
        return sql.select(SCHOOL.ID, SCHOOL.CODE, SCHOOL.NAME, SCHOOL.ZONE, SCHOOL.LANGUAGE)
                .from(SCHOOL);
    }

    private static School toSchool(
            UUID id, String code, String name, String zone, String language) {
        return new School(new SchoolId(id), code, name, ZoneId.of(zone), language);
    }

    int replaceSetUpLink(byte[] digest, Instant now) {
        sql.deleteFrom(SET_UP_LINK).where(SET_UP_LINK.USED_AT.isNull()).execute();
        return sql.insertInto(SET_UP_LINK)
                .set(SET_UP_LINK.TOKEN_DIGEST, digest)
                .set(SET_UP_LINK.CREATED_AT, now)
                .execute();
    }

    boolean isSetUpLinkOpen(byte[] digest, Instant notBefore) {
        return sql.fetchExists(
                SET_UP_LINK,
                SET_UP_LINK.TOKEN_DIGEST.eq(digest),
                SET_UP_LINK.USED_AT.isNull(),
                SET_UP_LINK.CREATED_AT.ge(notBefore));
    }

    boolean useSetUpLink(byte[] digest, Instant now, Instant notBefore) {
        return sql.update(SET_UP_LINK)
                        .set(SET_UP_LINK.USED_AT, now)
                        .where(
                                SET_UP_LINK.TOKEN_DIGEST.eq(digest),
                                SET_UP_LINK.USED_AT.isNull(),
                                SET_UP_LINK.CREATED_AT.ge(notBefore))
                        .execute()
                == 1;
    }
}
