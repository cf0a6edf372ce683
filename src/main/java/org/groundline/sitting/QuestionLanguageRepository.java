package org.groundline.sitting;

import static org.groundline.database.schema.Tables.QUESTION_LANGUAGE;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;

import java.util.Optional;
import java.util.UUID;

/// The language that each person chose for questions.
final class QuestionLanguageRepository {
    private final DSLContext sql;
    private final UUID school;

    QuestionLanguageRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    Optional<String> find(SubjectId subject) {
        return sql.select(QUESTION_LANGUAGE.LANGUAGE)
                .from(QUESTION_LANGUAGE)
                .where(
                        QUESTION_LANGUAGE.SCHOOL_ID.eq(school),
                        QUESTION_LANGUAGE.SUBJECT_ID.eq(subject.value()))
                .fetchOptional(QUESTION_LANGUAGE.LANGUAGE);
    }

    void put(SubjectId subject, String language) {
        sql.insertInto(QUESTION_LANGUAGE)
                .set(QUESTION_LANGUAGE.SCHOOL_ID, school)
                .set(QUESTION_LANGUAGE.SUBJECT_ID, subject.value())
                .set(QUESTION_LANGUAGE.LANGUAGE, language)
                .onConflict(QUESTION_LANGUAGE.SCHOOL_ID, QUESTION_LANGUAGE.SUBJECT_ID)
                .doUpdate()
                .set(QUESTION_LANGUAGE.LANGUAGE, language)
                .execute();
    }
}
