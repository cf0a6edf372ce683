package org.groundline.school;

import static org.groundline.database.schema.Tables.CREDENTIAL;
import static org.groundline.database.schema.Tables.LOGIN_ATTEMPT;
import static org.groundline.database.schema.Tables.PERSON;
import static org.groundline.database.schema.Tables.SESSION;
import static org.jooq.Records.mapping;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.school.Logins.Credential;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// The rows of sessions, passwords and tries to log in.
final class SessionRepository {
    private final DSLContext sql;
    private final UUID school;

    SessionRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    Optional<Credential> findCredential(SubjectId subject) {
        return sql.select(CREDENTIAL.SUBJECT_ID, CREDENTIAL.PASSWORD_HASH)
                .from(CREDENTIAL)
                .where(CREDENTIAL.SCHOOL_ID.eq(school), CREDENTIAL.SUBJECT_ID.eq(subject.value()))
                .fetchOptional(mapping((id, hash) -> new Credential(new SubjectId(id), hash)));
    }

    void updateCredential(SubjectId subject, String hash, Instant now) {
        sql.update(CREDENTIAL)
                .set(CREDENTIAL.PASSWORD_HASH, hash)
                .set(CREDENTIAL.CHANGED_AT, now)
                .where(CREDENTIAL.SCHOOL_ID.eq(school), CREDENTIAL.SUBJECT_ID.eq(subject.value()))
                .execute();
    }

    int countFailures(byte[] address, Instant since) {
        return sql.fetchCount(
                LOGIN_ATTEMPT,
                LOGIN_ATTEMPT.SCHOOL_ID.eq(school),
                LOGIN_ATTEMPT.EMAIL_DIGEST.eq(address),
                LOGIN_ATTEMPT.AT.ge(since),
                LOGIN_ATTEMPT.SUCCEEDED.isFalse());
    }

    void insertTry(UUID id, byte[] address, Instant now, boolean succeeded) {
        sql.insertInto(LOGIN_ATTEMPT)
                .set(LOGIN_ATTEMPT.SCHOOL_ID, school)
                .set(LOGIN_ATTEMPT.ID, id)
                .set(LOGIN_ATTEMPT.EMAIL_DIGEST, address)
                .set(LOGIN_ATTEMPT.AT, now)
                .set(LOGIN_ATTEMPT.SUCCEEDED, succeeded)
                .execute();
    }

    void insert(byte[] digest, SubjectId subject, Instant now, Instant expires) {
        sql.insertInto(SESSION)
                .set(SESSION.SCHOOL_ID, school)
                .set(SESSION.TOKEN_DIGEST, digest)
                .set(SESSION.SUBJECT_ID, subject.value())
                .set(SESSION.CREATED_AT, now)
                .set(SESSION.SEEN_AT, now)
                .set(SESSION.EXPIRES_AT, expires)
                .execute();
    }

    Optional<Person> findPerson(byte[] digest, Instant now) {
        return sql.select(PERSON.SUBJECT_ID, PERSON.GIVEN_NAME, PERSON.FAMILY_NAME, PERSON.EMAIL)
                .from(SESSION)
                .join(PERSON)
                .on(
                        PERSON.SCHOOL_ID.eq(SESSION.SCHOOL_ID),
                        PERSON.SUBJECT_ID.eq(SESSION.SUBJECT_ID))
                .where(
                        SESSION.SCHOOL_ID.eq(school),
                        SESSION.TOKEN_DIGEST.eq(digest),
                        SESSION.ENDED_AT.isNull(),
                        SESSION.EXPIRES_AT.gt(now))
                .fetchOptional(
                        mapping(
                                (id, given, family, email) ->
                                        new Person(new SubjectId(id), given, family, email)));
    }

    void noteSeen(byte[] digest, Instant now, Instant ifBefore) {
        sql.update(SESSION)
                .set(SESSION.SEEN_AT, now)
                .where(
                        SESSION.SCHOOL_ID.eq(school),
                        SESSION.TOKEN_DIGEST.eq(digest),
                        SESSION.SEEN_AT.lt(ifBefore))
                .execute();
    }

    void end(byte[] digest, Instant now) {
        sql.update(SESSION)
                .set(SESSION.ENDED_AT, now)
                .where(
                        SESSION.SCHOOL_ID.eq(school),
                        SESSION.TOKEN_DIGEST.eq(digest),
                        SESSION.ENDED_AT.isNull())
                .execute();
    }

    void endOthers(SubjectId subject, byte[] butThis, Instant now) {
        sql.update(SESSION)
                .set(SESSION.ENDED_AT, now)
                .where(
                        SESSION.SCHOOL_ID.eq(school),
                        SESSION.SUBJECT_ID.eq(subject.value()),
                        SESSION.TOKEN_DIGEST.ne(butThis),
                        SESSION.ENDED_AT.isNull())
                .execute();
    }
}
