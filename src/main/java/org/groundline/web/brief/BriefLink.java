package org.groundline.web.brief;

import org.groundline.bank.Topic;
import org.groundline.reading.Reading;
import org.groundline.web.request.Times;

import java.util.Map;

/// A way to a topic's brief, and whether it was read.
///
/// @param title of the topic
/// @param address empty where there is no brief
/// @param word what the link is called beside the topic's title
/// @param sign stands in the style sheet for a sign; the state says the same in words
public record BriefLink(String title, String address, String word, String sign, String state) {
    private static final String READ = "met";

    /// @param readings by topic, of all briefs there are
    /// @param root the address of the school
    public static BriefLink to(
            Topic topic,
            Map<String, Reading> readings,
            String root,
            BriefWords words,
            Times times) {
        Reading reading = readings.get(topic.id());
        return reading == null
                ? new BriefLink(topic.title(), "", words.brief(), "untouched", words.noBriefYet())
                : new BriefLink(
                        topic.title(),
                        root + "/briefs/" + topic.id(),
                        words.brief(),
                        sign(reading),
                        words.state(reading, times));
    }

    private static String sign(Reading reading) {
        return switch (reading) {
            case Reading.Unread() -> "untouched";
            case Reading.Current(var at) -> READ;
            case Reading.Changed(var at) -> "late";
        };
    }

    public boolean isThere() {
        return !address.isEmpty();
    }

    public boolean isRead() {
        return sign.equals(READ);
    }
}
