package org.groundline.school;

import static org.groundline.database.schema.Tables.INTAKE;
import static org.groundline.database.schema.Tables.INTAKE_MEMBER;
import static org.jooq.Records.mapping;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.jooq.DSLContext;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/// The rows of intakes and who is in them.
final class IntakeRepository {
    private final DSLContext sql;
    private final UUID school;

    IntakeRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    void insert(Intake intake) {
        sql.insertInto(INTAKE)
                .set(INTAKE.SCHOOL_ID, school)
                .set(INTAKE.ID, intake.id())
                .set(INTAKE.NAME, intake.name())
                .set(INTAKE.STARTS_ON, intake.startsOn())
                .execute();
    }

    void insertMember(UUID intake, SubjectId subject, LocalDate day) {
        sql.insertInto(INTAKE_MEMBER)
                .set(INTAKE_MEMBER.SCHOOL_ID, school)
                .set(INTAKE_MEMBER.INTAKE_ID, intake)
                .set(INTAKE_MEMBER.SUBJECT_ID, subject.value())
                .set(INTAKE_MEMBER.JOINED_ON, day)
                .onConflictDoNothing()
                .execute();
    }

    Intake getIntake(UUID id) {
        return sql.select(INTAKE.ID, INTAKE.NAME, INTAKE.STARTS_ON)
                .from(INTAKE)
                .where(INTAKE.SCHOOL_ID.eq(school), INTAKE.ID.eq(id))
                .fetchOptional(mapping(Intake::new))
                .orElseThrow(() -> new Refusal.NotFound("The school has no such intake."));
    }

    List<Intake> listAll() {
        return sql.select(INTAKE.ID, INTAKE.NAME, INTAKE.STARTS_ON)
                .from(INTAKE)
                .where(INTAKE.SCHOOL_ID.eq(school))
                .orderBy(INTAKE.STARTS_ON.desc(), INTAKE.NAME)
                .fetch(mapping(Intake::new));
    }

    List<Intake> listOf(SubjectId subject) {
        return sql.select(INTAKE.ID, INTAKE.NAME, INTAKE.STARTS_ON)
                .from(INTAKE)
                .join(INTAKE_MEMBER)
                .on(
                        INTAKE_MEMBER.SCHOOL_ID.eq(INTAKE.SCHOOL_ID),
                        INTAKE_MEMBER.INTAKE_ID.eq(INTAKE.ID))
                .where(INTAKE.SCHOOL_ID.eq(school), INTAKE_MEMBER.SUBJECT_ID.eq(subject.value()))
                .orderBy(INTAKE.STARTS_ON.desc(), INTAKE.NAME)
                .fetch(mapping(Intake::new));
    }
}
