package org.groundline.school;

import static org.groundline.database.schema.Tables.AUTHORISATION;
import static org.groundline.database.schema.Tables.ROLE_GRANT;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/// The rows of roles and authorisations.
final class RoleRepository {
    private final DSLContext sql;
    private final UUID school;

    RoleRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    static Condition inForceAt(Instant now) {
        return ROLE_GRANT
                .VALID_FROM
                .le(now)
                .and(ROLE_GRANT.VALID_UNTIL.isNull().or(ROLE_GRANT.VALID_UNTIL.gt(now)));
    }

    void insert(UUID id, SubjectId subject, Role role, Optional<SubjectId> by, Instant now) {
        sql.insertInto(ROLE_GRANT)
                .set(ROLE_GRANT.SCHOOL_ID, school)
                .set(ROLE_GRANT.ID, id)
                .set(ROLE_GRANT.SUBJECT_ID, subject.value())
                .set(ROLE_GRANT.ROLE, role.word())
                .set(ROLE_GRANT.VALID_FROM, now)
                .set(ROLE_GRANT.GRANTED_BY, by.map(SubjectId::value).orElse(null))
                .set(ROLE_GRANT.GRANTED_AT, now)
                .execute();
    }

    Set<Role> listInForce(SubjectId subject, Instant now) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        sql.select(ROLE_GRANT.ROLE)
                .from(ROLE_GRANT)
                .where(
                        ROLE_GRANT.SCHOOL_ID.eq(school),
                        ROLE_GRANT.SUBJECT_ID.eq(subject.value()),
                        inForceAt(now))
                .forEach(row -> Role.findByWord(row.value1()).ifPresent(roles::add));
        return roles;
    }

    void insertAuthorisation(SubjectId subject, Authorisation authorisation) {
        sql.insertInto(AUTHORISATION)
                .set(AUTHORISATION.SCHOOL_ID, school)
                .set(AUTHORISATION.ID, authorisation.id())
                .set(AUTHORISATION.SUBJECT_ID, subject.value())
                .set(AUTHORISATION.NUMBER, authorisation.number())
                .set(AUTHORISATION.DISCIPLINE, authorisation.discipline())
                .set(
                        AUTHORISATION.LAUNCH_METHODS,
                        authorisation.launchMethods().toArray(String[]::new))
                .set(AUTHORISATION.ISSUER, authorisation.issuer())
                .set(AUTHORISATION.VALID_FROM, authorisation.validFrom())
                .set(AUTHORISATION.VALID_UNTIL, authorisation.validUntil())
                .execute();
    }

    List<Authorisation> listAuthorisations(SubjectId subject) {
        return sql.selectFrom(AUTHORISATION)
                .where(
                        AUTHORISATION.SCHOOL_ID.eq(school),
                        AUTHORISATION.SUBJECT_ID.eq(subject.value()))
                .orderBy(AUTHORISATION.VALID_UNTIL.desc())
                .fetch(RoleRepository::toAuthorisation);
    }

    private static Authorisation toAuthorisation(Record row) {
        return new Authorisation(
                row.get(AUTHORISATION.ID),
                row.get(AUTHORISATION.NUMBER),
                row.get(AUTHORISATION.DISCIPLINE),
                List.of(row.get(AUTHORISATION.LAUNCH_METHODS)),
                row.get(AUTHORISATION.ISSUER),
                row.get(AUTHORISATION.VALID_FROM),
                row.get(AUTHORISATION.VALID_UNTIL));
    }
}
