package org.groundline.bank;

import java.util.List;

/// A misconception as frozen into an item's key: what a wrong answer suggests, and what is right.
public record Belief(String id, String feedback, String right) {
    /// The id of the misconception behind a right value in another unit.
    static final String UNIT_SLIP = "unit-slip";

    /// The id of the misconception behind a right value off by a power of ten.
    static final String TEN_SLIP = "power-of-ten-slip";

    static final List<String> SLIPS = List.of(UNIT_SLIP, TEN_SLIP);

    static Belief of(Misconception idea) {
        return new Belief(idea.id(), idea.feedback(), idea.right());
    }

    /// Whether it is no wrong idea but a slip that anybody may make.
    public boolean comesFromSlip() {
        return SLIPS.contains(id);
    }
}
