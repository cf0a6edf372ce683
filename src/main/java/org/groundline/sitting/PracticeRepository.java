package org.groundline.sitting;

import static org.groundline.database.schema.Tables.ANSWER;
import static org.groundline.database.schema.Tables.ITEM;
import static org.groundline.database.schema.Tables.ITEM_KEY;

import org.groundline.bank.Frozen;
import org.groundline.bank.Key;
import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.database.schema.tables.Sitting;
import org.groundline.sitting.Practices.Progress;
import org.jooq.DSLContext;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// What somebody practised. Reads keys of answered practice items only.
final class PracticeRepository {
    private final DSLContext sql;
    private final UUID school;

    PracticeRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// Returns how many practice items of each topic a person answered, and how many rightly.
    Map<String, Progress> progressOf(SubjectId subject) {
        Map<String, Progress> progress = new HashMap<>();
        Sitting sitting = Sitting.SITTING;
        sql.select(ITEM.TOPIC, ANSWER.READING, ITEM_KEY.KEY)
                .from(sitting)
                .join(ANSWER)
                .on(ANSWER.SCHOOL_ID.eq(sitting.SCHOOL_ID), ANSWER.SITTING_ID.eq(sitting.ID))
                .join(ITEM)
                .on(ITEM.SCHOOL_ID.eq(ANSWER.SCHOOL_ID), ITEM.ID.eq(ANSWER.ITEM_ID))
                .join(ITEM_KEY)
                .on(ITEM_KEY.SCHOOL_ID.eq(ITEM.SCHOOL_ID), ITEM_KEY.ITEM_ID.eq(ITEM.ID))
                .where(
                        sitting.SCHOOL_ID.eq(school),
                        sitting.SUBJECT_ID.eq(subject.value()),
                        sitting.STAKES.eq(Stakes.PRACTICE.word()))
                .forEach(
                        row ->
                                progress.merge(
                                        row.value1(),
                                        one(Frozen.readKey(row.value3().data()), row.value2()),
                                        (a, b) ->
                                                new Progress(
                                                        a.answered() + b.answered(),
                                                        a.right() + b.right())));
        return progress;
    }

    private static Progress one(Key key, String reading) {
        Verdict verdict = Marking.mark(key, Optional.of(reading)).verdict();
        return new Progress(1, verdict == Verdict.RIGHT ? 1 : 0);
    }
}
