package org.groundline.bank;

import java.util.List;

/// A part of a course that is tested and signed off by itself.
@SuppressWarnings("JavaLangClash") // the training trade's word
public record Module(
        String id, String title, List<Topic> topics, List<Demonstration> demonstrations) {
    public Module {
        topics = List.copyOf(topics);
        demonstrations = List.copyOf(demonstrations);
    }
}
