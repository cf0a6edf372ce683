package org.groundline.sitting;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/// A sitting as its student sees it on the way: items without keys, what was given so far, on which
/// seat.
///
/// @param answers the answer that counts for each item, as things stand
/// @param flagged the items the student wants to come back to
/// @param seat the seat of this device and browser
/// @param nextSequence what the next answer on this seat is to carry
public record OpenSitting(
        Sitting.Open sitting,
        String title,
        List<Item> items,
        Map<UUID, KeptAnswer> answers,
        Set<UUID> flagged,
        int seat,
        int nextSequence) {
    public OpenSitting {
        items = List.copyOf(items);
        answers = Map.copyOf(answers);
        flagged = Set.copyOf(flagged);
    }

    /// The items without an answer, in the order of the paper.
    public List<Item> unanswered() {
        return items.stream().filter(item -> !answers.containsKey(item.id())).toList();
    }
}
