package org.groundline.sitting;

import static org.groundline.database.schema.Tables.ITEM;
import static org.groundline.database.schema.Tables.ITEM_KEY;
import static org.jooq.impl.DSL.any;
import static org.jooq.impl.DSL.array;
import static org.jooq.impl.DSL.select;

import org.groundline.bank.Frozen;
import org.groundline.bank.Key;
import org.groundline.database.SchoolId;
import org.jooq.DSLContext;
import org.jooq.JSONB;

import java.util.Map;
import java.util.UUID;

/// What only marking may see. Read after hand-in, and in practice after the answer; by nobody
/// before.
final class KeyRepository {
    private final DSLContext sql;
    private final UUID school;

    KeyRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    void insert(UUID item, Key key) {
        sql.insertInto(ITEM_KEY)
                .set(ITEM_KEY.SCHOOL_ID, school)
                .set(ITEM_KEY.ITEM_ID, item)
                .set(ITEM_KEY.KEY, JSONB.valueOf(Frozen.write(key)))
                .execute();
    }

    Key getKey(UUID item) {
        return sql.select(ITEM_KEY.KEY)
                .from(ITEM_KEY)
                .where(ITEM_KEY.SCHOOL_ID.eq(school), ITEM_KEY.ITEM_ID.eq(item))
                .fetchSingle(row -> Frozen.readKey(row.value1().data()));
    }

    /// Returns the keys of a paper, by item. The items are looked up first: joined, a database that
    /// has no statistics yet reads all items once for every key of the school.
    Map<UUID, Key> keysOf(UUID paper) {
        var items =
                array(
                        select(ITEM.ID)
                                .from(ITEM)
                                .where(ITEM.SCHOOL_ID.eq(school), ITEM.PAPER_ID.eq(paper)));
        return sql.select(ITEM_KEY.ITEM_ID, ITEM_KEY.KEY)
                .from(ITEM_KEY)
                .where(ITEM_KEY.SCHOOL_ID.eq(school), ITEM_KEY.ITEM_ID.eq(any(items)))
                .fetchMap(row -> row.value1(), row -> Frozen.readKey(row.value2().data()));
    }
}
