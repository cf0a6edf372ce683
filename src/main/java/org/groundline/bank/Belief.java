package org.groundline.bank;

/// A misconception as frozen into an item's key: what a wrong answer suggests, and what is right.
public record Belief(String id, String feedback, String right) {
    static Belief of(Misconception idea) {
        return new Belief(idea.id(), idea.feedback(), idea.right());
    }
}
