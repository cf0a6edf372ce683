package org.groundline.sitting;

import static org.groundline.database.schema.Tables.BLUEPRINT;
import static org.groundline.database.schema.Tables.INTAKE_MEMBER;
import static org.groundline.database.schema.Tables.OPENING;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.impl.DSL;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// The rows of blueprints and of tests opened by them.
final class OpeningRepository {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final DSLContext sql;
    private final UUID school;

    OpeningRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// The part of a blueprint that is kept as JSON.
    private record Rules(Map<String, Integer> topics, int safetyCritical, int numericMost) {}

    void insertBlueprint(Blueprint blueprint, Instant now) {
        sql.insertInto(BLUEPRINT)
                .set(BLUEPRINT.SCHOOL_ID, school)
                .set(BLUEPRINT.ID, blueprint.id())
                .set(BLUEPRINT.STAKES, blueprint.stakes().word())
                .set(BLUEPRINT.NAME, blueprint.name())
                .set(BLUEPRINT.MODULE, blueprint.module())
                .set(BLUEPRINT.MINUTES, blueprint.minutes())
                .set(BLUEPRINT.RULES, JSONB.valueOf(write(blueprint)))
                .set(BLUEPRINT.ENTERED_AT, now)
                .execute();
    }

    /// Returns the newest blueprint of a module.
    Optional<Blueprint> findBlueprint(Stakes stakes, String module) {
        return sql.selectFrom(BLUEPRINT)
                .where(
                        BLUEPRINT.SCHOOL_ID.eq(school),
                        BLUEPRINT.STAKES.eq(stakes.word()),
                        BLUEPRINT.MODULE.eq(module))
                .orderBy(BLUEPRINT.ENTERED_AT.desc(), BLUEPRINT.ID.desc())
                .limit(1)
                .fetchOptional(OpeningRepository::toBlueprint);
    }

    void insert(Opening opening) {
        sql.insertInto(OPENING)
                .set(OPENING.SCHOOL_ID, school)
                .set(OPENING.ID, opening.id())
                .set(OPENING.STAKES, opening.blueprint().stakes().word())
                .set(OPENING.BLUEPRINT_ID, opening.blueprint().id())
                .set(OPENING.INTAKE_ID, opening.intake())
                .set(OPENING.OPENED_BY, opening.openedBy().value())
                .set(OPENING.OPENS_AT, opening.opensAt())
                .set(OPENING.CLOSES_AT, opening.closesAt())
                .set(OPENING.PLACE, opening.place())
                .execute();
    }

    Optional<Opening> findOpening(UUID id) {
        return list(OPENING.ID.eq(id)).stream().findFirst();
    }

    /// Returns all tests that were opened, the newest first.
    List<Opening> listAll() {
        return list(DSL.noCondition());
    }

    /// Returns the tests that were opened for a person's intakes, the newest first.
    List<Opening> listFor(SubjectId subject) {
        return list(
                DSL.exists(
                        DSL.selectOne()
                                .from(INTAKE_MEMBER)
                                .where(
                                        INTAKE_MEMBER.SCHOOL_ID.eq(school),
                                        INTAKE_MEMBER.INTAKE_ID.eq(OPENING.INTAKE_ID),
                                        INTAKE_MEMBER.SUBJECT_ID.eq(subject.value()))));
    }

    private List<Opening> list(Condition condition) {
        return sql.select(OPENING.fields())
                .select(BLUEPRINT.fields())
                .from(OPENING)
                .join(BLUEPRINT)
                .on(
                        BLUEPRINT.SCHOOL_ID.eq(OPENING.SCHOOL_ID),
                        BLUEPRINT.ID.eq(OPENING.BLUEPRINT_ID))
                .where(OPENING.SCHOOL_ID.eq(school), condition)
                .orderBy(OPENING.OPENS_AT.desc(), OPENING.ID.desc())
                .fetch(OpeningRepository::toOpening);
    }

    private static Opening toOpening(Record row) {
        return new Opening(
                row.get(OPENING.ID),
                toBlueprint(row),
                row.get(OPENING.INTAKE_ID),
                new SubjectId(row.get(OPENING.OPENED_BY)),
                row.get(OPENING.OPENS_AT),
                row.get(OPENING.CLOSES_AT),
                row.get(OPENING.PLACE));
    }

    private static Blueprint toBlueprint(Record row) {
        Rules rules = read(row.get(BLUEPRINT.RULES).data());
        return new Blueprint(
                row.get(BLUEPRINT.ID),
                Stakes.ofWord(row.get(BLUEPRINT.STAKES)),
                row.get(BLUEPRINT.NAME),
                row.get(BLUEPRINT.MODULE),
                row.get(BLUEPRINT.MINUTES),
                rules.topics(),
                rules.safetyCritical(),
                rules.numericMost());
    }

    private static String write(Blueprint blueprint) {
        try {
            return JSON.writeValueAsString(
                    new Rules(
                            blueprint.topics(),
                            blueprint.safetyCritical(),
                            blueprint.numericMost()));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the rules of a blueprint cannot be written", e);
        }
    }

    private static Rules read(String text) {
        try {
            return JSON.readValue(text, Rules.class);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the rules of a blueprint cannot be read: " + text, e);
        }
    }
}
