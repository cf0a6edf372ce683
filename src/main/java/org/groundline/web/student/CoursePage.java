package org.groundline.web.student;

import org.groundline.web.brief.BriefLink;
import org.groundline.web.request.Frame;

import java.util.List;

/// Where a student stands, and what to do next.
///
/// @param maySit whether the reader sits tests at all
public record CoursePage(
        Frame frame,
        CourseWords words,
        String title,
        String lead,
        boolean maySit,
        List<OpenTest> tests,
        List<ModulePart> modules,
        List<PastTest> results) {
    public CoursePage {
        tests = List.copyOf(tests);
        modules = List.copyOf(modules);
        results = List.copyOf(results);
    }

    /// A test that may be begun or gone on with now.
    ///
    /// @param address where the button leads
    public record OpenTest(String name, String note, String address, String button) {}

    /// A module with its state, its topics and what is missing.
    ///
    /// @param done whether it is signed off, and the rest only evidence
    /// @param state stands in the style sheet for a sign; the words say the same
    public record ModulePart(
            String id,
            int number,
            boolean done,
            String title,
            String state,
            String stateWords,
            List<TopicLine> topics,
            List<Line> requirements) {
        public ModulePart {
            topics = List.copyOf(topics);
            requirements = List.copyOf(requirements);
        }
    }

    /// A topic, its brief and how much of it was practised.
    ///
    /// @param practice where it is practised; empty for somebody who may not
    public record TopicLine(
            String title, String practice, BriefLink brief, int answered, int right) {}

    /// A requirement of a sign-off.
    ///
    /// @param state stands in the style sheet for a sign; the words say the same
    /// @param text as HTML
    /// @param detail as HTML; may be empty
    /// @param language of the detail, a BCP 47 tag
    public record Line(
            String state, String stateWords, String text, String detail, String language) {}

    /// A test that was handed in.
    public record PastTest(
            String name,
            String address,
            String day,
            String marks,
            boolean passed,
            String outcome) {}
}
