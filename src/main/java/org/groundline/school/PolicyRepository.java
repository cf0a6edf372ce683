package org.groundline.school;

import static org.groundline.database.schema.Tables.POLICY;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;
import org.jooq.JSONB;
import org.jooq.Record;

import java.time.Instant;
import java.util.Optional;

/// The versions of the policy.
final class PolicyRepository {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final DSLContext sql;

    PolicyRepository(DSLContext sql) {
        this.sql = sql;
    }

    Policy inForceAt(SchoolId school, Instant now) {
        return sql.selectFrom(POLICY)
                .where(POLICY.SCHOOL_ID.eq(school.value()), POLICY.IN_FORCE.le(now))
                .orderBy(POLICY.VERSION.desc())
                .limit(1)
                .fetchSingle(PolicyRepository::toPolicy);
    }

    Policy getVersion(SchoolId school, int version) {
        return sql.selectFrom(POLICY)
                .where(POLICY.SCHOOL_ID.eq(school.value()), POLICY.VERSION.eq(version))
                .fetchSingle(PolicyRepository::toPolicy);
    }

    void insert(SchoolId school, Policy policy, Optional<SubjectId> by, Instant now) {
        sql.insertInto(POLICY)
                .set(POLICY.SCHOOL_ID, school.value())
                .set(POLICY.VERSION, policy.version())
                .set(POLICY.IN_FORCE, policy.inForce())
                .set(POLICY.ENTERED_AT, now)
                .set(POLICY.ENTERED_BY, by.map(SubjectId::value).orElse(null))
                .set(POLICY.RULES, JSONB.valueOf(write(policy.rules())))
                .execute();
    }

    private static Policy toPolicy(Record row) {
        return new Policy(
                row.get(POLICY.VERSION),
                row.get(POLICY.IN_FORCE),
                read(row.get(POLICY.RULES).data()));
    }

    private static String write(PolicyRules rules) {
        try {
            return JSON.writeValueAsString(rules);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("policy rules cannot be written", e);
        }
    }

    private static PolicyRules read(String text) {
        try {
            return JSON.readValue(text, PolicyRules.class);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("policy rules cannot be read: " + text, e);
        }
    }
}
