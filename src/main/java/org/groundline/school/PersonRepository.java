package org.groundline.school;

import static org.groundline.database.schema.Tables.CREDENTIAL;
import static org.groundline.database.schema.Tables.INTAKE_MEMBER;
import static org.groundline.database.schema.Tables.PERSON;
import static org.groundline.database.schema.Tables.ROLE_GRANT;
import static org.groundline.database.schema.Tables.SUBJECT;
import static org.jooq.Records.mapping;
import static org.jooq.impl.DSL.exists;
import static org.jooq.impl.DSL.noCondition;
import static org.jooq.impl.DSL.selectOne;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record4;
import org.jooq.SelectConditionStep;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// The rows of people.
final class PersonRepository {
    private final DSLContext sql;
    private final UUID school;

    PersonRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    void insert(Person person, String emailNormalised, Instant now) {
        sql.insertInto(SUBJECT)
                .set(SUBJECT.SCHOOL_ID, school)
                .set(SUBJECT.ID, person.subject().value())
                .set(SUBJECT.CREATED_AT, now)
                .execute();
        sql.insertInto(PERSON)
                .set(PERSON.SCHOOL_ID, school)
                .set(PERSON.SUBJECT_ID, person.subject().value())
                .set(PERSON.GIVEN_NAME, person.givenName())
                .set(PERSON.FAMILY_NAME, person.familyName())
                .set(PERSON.EMAIL, person.email())
                .set(PERSON.EMAIL_NORMALISED, emailNormalised)
                .execute();
    }

    void insertCredential(SubjectId subject, String hash, Instant now) {
        sql.insertInto(CREDENTIAL)
                .set(CREDENTIAL.SCHOOL_ID, school)
                .set(CREDENTIAL.SUBJECT_ID, subject.value())
                .set(CREDENTIAL.PASSWORD_HASH, hash)
                .set(CREDENTIAL.CHANGED_AT, now)
                .execute();
    }

    Person getPerson(SubjectId subject) {
        return where(PERSON.SUBJECT_ID.eq(subject.value()))
                .fetchOptional(mapping(PersonRepository::toPerson))
                .orElseThrow(() -> new Refusal.NotFound("There is no such person in this school."));
    }

    Optional<Person> findByEmail(String emailNormalised) {
        return where(PERSON.EMAIL_NORMALISED.eq(emailNormalised))
                .fetchOptional(mapping(PersonRepository::toPerson));
    }

    List<Person> listAll() {
        return where(noCondition()).fetch(mapping(PersonRepository::toPerson));
    }

    List<Person> listStudents(Optional<UUID> intake, Instant now) {
        Condition member =
                intake.<Condition>map(
                                id ->
                                        exists(
                                                selectOne()
                                                        .from(INTAKE_MEMBER)
                                                        .where(
                                                                INTAKE_MEMBER.SCHOOL_ID.eq(school),
                                                                INTAKE_MEMBER.INTAKE_ID.eq(id),
                                                                INTAKE_MEMBER.SUBJECT_ID.eq(
                                                                        PERSON.SUBJECT_ID))))
                        .orElse(noCondition());
        Condition student =
                exists(
                        selectOne()
                                .from(ROLE_GRANT)
                                .where(
                                        ROLE_GRANT.SCHOOL_ID.eq(school),
                                        ROLE_GRANT.SUBJECT_ID.eq(PERSON.SUBJECT_ID),
                                        ROLE_GRANT.ROLE.eq(Role.STUDENT.word()),
                                        RoleRepository.inForceAt(now)));
        return where(student.and(member)).fetch(mapping(PersonRepository::toPerson));
    }

    private SelectConditionStep<Record4<UUID, String, String, String>> where(Condition condition) {
        return sql.select(PERSON.SUBJECT_ID, PERSON.GIVEN_NAME, PERSON.FAMILY_NAME, PERSON.EMAIL)
                .from(PERSON)
                .where(PERSON.SCHOOL_ID.eq(school), condition);
    }

    private static Person toPerson(UUID subject, String given, String family, String email) {
        return new Person(new SubjectId(subject), given, family, email);
    }
}
