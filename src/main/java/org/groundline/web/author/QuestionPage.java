package org.groundline.web.author;

import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;

import java.util.List;
import java.util.Optional;

/// One question as its authors and reviewers see it.
///
/// @param shown an item of it; empty where the only text has errors
/// @param template whether each item of it is another one
/// @param editions the newest first
/// @param today as a date field takes it
/// @param instances more items; empty unless asked for
public record QuestionPage(
        Frame frame,
        BankWords words,
        Returned form,
        String id,
        List<Fact> facts,
        Optional<PosedView> shown,
        boolean template,
        List<Stood> editions,
        List<Said> remarks,
        Deeds deeds,
        String today,
        List<PosedView> instances) {
    public QuestionPage {
        facts = List.copyOf(facts);
        editions = List.copyOf(editions);
        remarks = List.copyOf(remarks);
        instances = List.copyOf(instances);
    }

    /// Something known about the question.
    public record Fact(String name, String value) {}

    /// An edition and where it stands.
    ///
    /// @param reviewer empty where nobody decided on it yet
    /// @param validity empty where it was not approved
    /// @param change empty for a new question
    public record Stood(
            int number,
            String state,
            String author,
            String writtenAt,
            String reviewer,
            String validity,
            String change) {}

    /// A remark.
    public record Said(String author, String at, String text) {}

    /// What the reader may do.
    ///
    /// @param submit the edition that may be submitted
    /// @param review the edition that may be approved or sent back
    /// @param waits whether the reader's own text waits for a second person
    /// @param version of the text to be reviewed
    /// @param retire the edition that may be retired
    public record Deeds(
            boolean write,
            Optional<String> submit,
            Optional<String> review,
            boolean waits,
            String version,
            Optional<String> retire,
            boolean withdraw,
            boolean restore) {}
}
