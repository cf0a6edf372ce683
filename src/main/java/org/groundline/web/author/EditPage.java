package org.groundline.web.author;

import org.groundline.bank.QuestionText;
import org.groundline.bank.QuestionText.Answer;
import org.groundline.bank.QuestionText.Place;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;

import java.util.List;
import java.util.Optional;

/// Writing a question.
///
/// @param text as a file would hold it
/// @param parts for the form; empty where the text is written as such
/// @param since the number of the edition that this one follows; 0 for none
public record EditPage(
        Frame frame,
        BankWords words,
        Returned form,
        String text,
        Optional<QuestionText> parts,
        int since,
        EditChoices choices,
        Said said) {
    /// What the bank says to the text.
    ///
    /// @param instances how it would look
    public record Said(
            BankWords words, List<Finding> findings, boolean sound, List<PosedView> instances) {
        public Said {
            findings = List.copyOf(findings);
            instances = List.copyOf(instances);
        }

        public boolean silent() {
            return findings.isEmpty() && !sound;
        }
    }

    /// Something the bank says.
    public record Finding(String severity, String text) {}

    /// The option of a number from 1; an empty one beyond those there are.
    public Answer option(int number) {
        List<Answer> options = parts.map(QuestionText::options).orElse(List.of());
        return number <= options.size() ? options.get(number - 1) : new Answer("", false, "");
    }

    /// The source of a number from 1; an empty one beyond those there are.
    public Place source(int number) {
        List<Place> sources = parts.map(QuestionText::sources).orElse(List.of());
        return number <= sources.size() ? sources.get(number - 1) : new Place("", "");
    }
}
