package org.groundline.web.api;

import org.groundline.record.TalkItem;

import java.util.Optional;
import java.util.UUID;

/// A safety-critical item to be talked through.
///
/// @param language of the question, BCP 47
/// @param verdict `wrong` or `unanswered`
/// @param belief the id of the wrong idea behind the answer, where one is known
/// @param talks how many talks there were that did not settle it
record TalkView(
        UUID item,
        UUID sitting,
        String topic,
        String language,
        QuestionView question,
        String verdict,
        Optional<String> belief,
        int talks) {
    static TalkView of(TalkItem talk) {
        return new TalkView(
                talk.item(),
                talk.sitting(),
                talk.topic(),
                talk.language(),
                QuestionView.of(talk.shown()),
                talk.verdict(),
                Optional.of(talk.belief()).filter(belief -> !belief.isEmpty()),
                talk.talks());
    }
}
