package org.groundline.web.api;

import org.groundline.sitting.Item;

import java.util.UUID;

/// An item on its paper, before anything of it may be explained.
///
/// @param position from 1
/// @param language of its texts and of what explains it, BCP 47
record ItemView(UUID item, int position, String topic, String language, QuestionView question) {
    static ItemView of(Item item) {
        return new ItemView(
                item.id(),
                item.position(),
                item.topic(),
                item.language(),
                QuestionView.of(item.shown()));
    }
}
