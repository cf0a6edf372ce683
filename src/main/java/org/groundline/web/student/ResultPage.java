package org.groundline.web.student;

import org.groundline.web.request.Frame;

import java.util.List;

/// What came of a test, with everything that explains it.
///
/// @param lead the result in a sentence
/// @param toTalkOver safety-critical items that still wait for a talk
/// @param missed the others that were not answered rightly
/// @param again where to practise first what was missed; empty where nothing was, or the reader is
///   not the student
public record ResultPage(
        Frame frame,
        ResultWords words,
        Lead lead,
        List<Fact> facts,
        List<TopicRow> topics,
        TopicRow all,
        List<Entry> toTalkOver,
        List<Entry> missed,
        List<Entry> right,
        String again) {
    public ResultPage {
        facts = List.copyOf(facts);
        topics = List.copyOf(topics);
        toTalkOver = List.copyOf(toTalkOver);
        missed = List.copyOf(missed);
        right = List.copyOf(right);
    }

    /// The result in a sentence.
    ///
    /// @param marks such as "24 of 30, 80 %. The pass mark is 75 %:"
    /// @param talks what safety-critical answers ask for; empty where all were right
    public record Lead(String marks, boolean passed, String outcome, String talks) {}

    /// A name and what belongs to it.
    public record Fact(String name, String value) {}

    /// The marks of a topic.
    public record TopicRow(String title, String right, String of, String share) {}

    /// An item with its answer and its reasons.
    ///
    /// @param version the question's id and version
    /// @param waits whether it is still to be talked over
    public record Entry(
            ExplainedItem item,
            String topic,
            boolean safetyCritical,
            boolean waits,
            String version) {
        /// Whether it had to be talked over and was.
        public boolean talkedOver() {
            return safetyCritical && !item.right() && !waits;
        }
    }
}
