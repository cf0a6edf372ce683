package org.groundline.web.author;

import org.groundline.bank.Belief;
import org.groundline.bank.Key;
import org.groundline.bank.Posed;
import org.groundline.bank.Shown;
import org.groundline.diagram.Purpose;
import org.groundline.web.request.Figures;
import org.groundline.web.request.Markdown;

import java.util.ArrayList;
import java.util.List;

/// An item as students would see it, with everything that its author wants to see beside.
///
/// @param stem as HTML
/// @param figures beside the stem, as HTML
/// @param options with key and the idea behind each other one; empty where a number is asked
/// @param answer the right number with what is accepted; empty where there are options
/// @param mistakes wrong numbers and what they suggest
/// @param rationale as HTML
/// @param steps as HTML
/// @param solution the drawing that explains the answer, as HTML
public record PosedView(
        String stem,
        String figures,
        List<Option> options,
        String answer,
        List<Option> mistakes,
        String rationale,
        List<String> steps,
        String solution,
        String sources) {
    public PosedView {
        options = List.copyOf(options);
        mistakes = List.copyOf(mistakes);
        steps = List.copyOf(steps);
    }

    /// @param letter empty for a number
    /// @param text as HTML
    /// @param idea what who takes it is told; empty at the key
    public record Option(String letter, String text, boolean key, String idea) {}

    /// @param id begins the ids in the drawings, which no other item on the page may share
    static PosedView of(BankWords words, Posed posed, String id) {
        Key key = posed.key();
        return new PosedView(
                Markdown.inline(posed.shown().stem()),
                Figures.html(posed.shown().figures(), Purpose.STEM, id + "-stem"),
                options(posed),
                answer(words, key),
                mistakes(key),
                Markdown.blocks(key.rationale()),
                key.steps().stream().map(Markdown::inline).toList(),
                Figures.html(key.figures(), Purpose.SOLUTION, id + "-solution"),
                String.join("; ", key.sources()));
    }

    private static List<Option> options(Posed posed) {
        List<Option> options = new ArrayList<>();
        if (posed.shown() instanceof Shown.Choice choice
                && posed.key() instanceof Key.Choice right) {
            for (int i = 0; i < choice.options().size(); i++) {
                String letter = String.valueOf((char) ('A' + i));
                options.add(
                        new Option(
                                letter,
                                Markdown.inline(choice.options().get(i)),
                                letter.equals(right.letter()),
                                right.findBelief(letter).map(Belief::feedback).orElse("")));
            }
        }
        return options;
    }

    private static String answer(BankWords words, Key key) {
        return switch (key) {
            case Key.Choice choice -> "";
            case Key.Number number ->
                    words.accepted(
                            number.answer().toPlainString(),
                            number.lowest().toPlainString(),
                            number.highest().toPlainString(),
                            number.unit());
        };
    }

    private static List<Option> mistakes(Key key) {
        return switch (key) {
            case Key.Choice choice -> List.of();
            case Key.Number number ->
                    number.mistakes().stream()
                            .filter(m -> !m.belief().comesFromSlip())
                            .map(
                                    m ->
                                            new Option(
                                                    "",
                                                    m.shown().toPlainString() + " " + number.unit(),
                                                    false,
                                                    m.belief().feedback()))
                            .toList();
        };
    }
}
