package org.groundline.sitting;

import static org.groundline.database.schema.Tables.ITEM;
import static org.groundline.database.schema.Tables.PAPER;
import static org.groundline.database.schema.Tables.QUESTION_VERSION;
import static org.groundline.database.schema.Tables.SITTING;

import org.groundline.bank.Frozen;
import org.groundline.bank.Posed;
import org.groundline.bank.Question;
import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.ledger.CanonicalJson;
import org.jooq.DSLContext;
import org.jooq.JSONB;
import org.jooq.Record;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Papers and their items: what students may see. Knows nothing of keys.
final class ItemRepository {
    private final DSLContext sql;
    private final UUID school;

    ItemRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// A paper to be kept.
    ///
    /// @param blueprint empty in practice
    record NewPaper(
            UUID id,
            Stakes stakes,
            Optional<UUID> blueprint,
            long seed,
            int drawVersion,
            String bankHash,
            Instant at) {}

    /// An item to be kept, without its key.
    ///
    /// @param version of the question, or of its translation
    /// @param language of its texts
    record NewItem(
            UUID id,
            UUID paper,
            int position,
            long seed,
            String version,
            String language,
            Question question,
            Posed posed) {}

    /// A version of a question to be kept, in the language that its canonical text says.
    record NewVersion(String version, String questionId, String canonical) {}

    void insertPaper(NewPaper paper) {
        sql.insertInto(PAPER)
                .set(PAPER.SCHOOL_ID, school)
                .set(PAPER.ID, paper.id())
                .set(PAPER.STAKES, paper.stakes().word())
                .set(PAPER.BLUEPRINT_ID, paper.blueprint().orElse(null))
                .set(PAPER.SEED, paper.seed())
                .set(PAPER.DRAW_VERSION, paper.drawVersion())
                .set(PAPER.BANK_HASH, paper.bankHash())
                .set(PAPER.ASSEMBLED_AT, paper.at())
                .execute();
    }

    /// Copies the version of a question into the school, the first time it is posed there.
    void insertQuestionVersion(NewVersion version, Instant now) {
        sql.insertInto(QUESTION_VERSION)
                .set(QUESTION_VERSION.SCHOOL_ID, school)
                .set(QUESTION_VERSION.VERSION, version.version())
                .set(QUESTION_VERSION.QUESTION_ID, version.questionId())
                .set(QUESTION_VERSION.CANONICAL, version.canonical())
                .set(QUESTION_VERSION.FIRST_POSED_AT, now)
                .onConflictDoNothing()
                .execute();
    }

    void insertItem(NewItem item) {
        Question question = item.question();
        sql.insertInto(ITEM)
                .set(ITEM.SCHOOL_ID, school)
                .set(ITEM.ID, item.id())
                .set(ITEM.PAPER_ID, item.paper())
                .set(ITEM.POSITION, item.position())
                .set(ITEM.QUESTION_ID, question.id())
                .set(ITEM.QUESTION_VERSION, item.version())
                .set(ITEM.MODULE, question.module())
                .set(ITEM.TOPIC, question.topic())
                .set(ITEM.OBJECTIVE, question.objective())
                .set(ITEM.LEVEL, question.level().word())
                .set(ITEM.SAFETY_CRITICAL, question.safetyCritical())
                .set(ITEM.SEED, item.seed())
                .set(ITEM.DRAWN, JSONB.valueOf(CanonicalJson.of(Map.copyOf(item.posed().drawn()))))
                .set(ITEM.SHOWN, JSONB.valueOf(Frozen.write(item.posed().shown())))
                .set(ITEM.LANGUAGE, item.language())
                .execute();
    }

    List<Item> listItems(UUID paper) {
        return sql.selectFrom(ITEM)
                .where(ITEM.SCHOOL_ID.eq(school), ITEM.PAPER_ID.eq(paper))
                .orderBy(ITEM.POSITION)
                .fetch(ItemRepository::toItem);
    }

    /// Returns an item of a sitting that is this person's; empty where any of it is not so.
    Optional<Item> findItem(UUID sitting, UUID item, SubjectId subject) {
        return sql.select(ITEM.fields())
                .from(ITEM)
                .join(SITTING)
                .on(SITTING.SCHOOL_ID.eq(ITEM.SCHOOL_ID), SITTING.PAPER_ID.eq(ITEM.PAPER_ID))
                .where(
                        ITEM.SCHOOL_ID.eq(school),
                        ITEM.ID.eq(item),
                        SITTING.ID.eq(sitting),
                        SITTING.SUBJECT_ID.eq(subject.value()))
                .fetchOptional(ItemRepository::toItem);
    }

    /// Returns the question ids of a person's newest items of a topic, the newest first.
    List<String> listRecentQuestions(SubjectId subject, Stakes stakes, String topic, int most) {
        return sql.select(ITEM.QUESTION_ID)
                .from(SITTING)
                .join(ITEM)
                .on(ITEM.SCHOOL_ID.eq(SITTING.SCHOOL_ID), ITEM.PAPER_ID.eq(SITTING.PAPER_ID))
                .where(
                        SITTING.SCHOOL_ID.eq(school),
                        SITTING.SUBJECT_ID.eq(subject.value()),
                        SITTING.STAKES.eq(stakes.word()),
                        SITTING.SCOPE.eq(topic))
                .orderBy(SITTING.STARTED_AT.desc(), ITEM.POSITION.desc())
                .limit(most)
                .fetch(ITEM.QUESTION_ID);
    }

    static Item toItem(Record row) {
        return new Item(
                row.get(ITEM.ID),
                row.get(ITEM.POSITION),
                row.get(ITEM.QUESTION_ID),
                row.get(ITEM.QUESTION_VERSION),
                row.get(ITEM.LANGUAGE),
                row.get(ITEM.TOPIC),
                row.get(ITEM.OBJECTIVE),
                row.get(ITEM.SAFETY_CRITICAL),
                Frozen.readShown(row.get(ITEM.SHOWN).data()));
    }
}
