package org.groundline.web.brief;

import org.groundline.bank.Brief;
import org.groundline.bank.Citation;
import org.groundline.bank.Course;
import org.groundline.bank.Objective;
import org.groundline.bank.Topic;
import org.groundline.web.request.BriefHtml;

import java.util.List;

/// A brief as it is read and printed.
///
/// @param id of the topic
/// @param html its text and pictures
/// @param objectives of its topic
/// @param version the first digits of it, enough to tell one sheet on the wall from a later one
public record BriefSheet(
        String id,
        String module,
        String title,
        String html,
        List<Objective> objectives,
        List<String> sources,
        String version) {
    private static final int DIGITS = 8;

    public BriefSheet {
        objectives = List.copyOf(objectives);
        sources = List.copyOf(sources);
    }

    /// @param lowered by how many levels its headings stand below those of a page of its own
    static BriefSheet of(Brief brief, Course course, BriefWords words, int lowered) {
        Topic topic = course.findTopic(brief.topic()).orElseThrow();
        return new BriefSheet(
                topic.id(),
                course.findModule(brief.module()).orElseThrow().title(),
                topic.title(),
                BriefHtml.of(brief, lowered, words.objectives()),
                topic.objectives(),
                brief.sources().stream().map(Citation::text).toList(),
                brief.version().substring(0, DIGITS));
    }
}
