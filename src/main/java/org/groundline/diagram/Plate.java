package org.groundline.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// A drawing in the making: what may be known, the paper, and the words. Whatever is labelled in
/// the picture is also told in its description.
final class Plate {
    private final Facts facts;
    private final Sheet sheet;
    private final DiagramWords words;
    private final List<String> told = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    Plate(Facts facts, Sheet sheet, DiagramWords words) {
        this.facts = facts;
        this.sheet = sheet;
        this.words = words;
    }

    Facts facts() {
        return facts;
    }

    DiagramWords words() {
        return words;
    }

    double height() {
        return sheet.height();
    }

    /// A pen for a part that carries no value.
    Pen pen(String part, Ink ink) {
        return new Pen(sheet, part, ink);
    }

    /// A pen for a value; it draws in the accent where that is asked.
    Pen pen(Term term, Ink ink) {
        return new Pen(sheet, term.id(), ink.asked(facts.isAsked(term)));
    }

    /// Writes those of the values that are to be labelled, with their names, one beneath the other.
    void label(List<Spot> spots, Term... terms) {
        write(linesOf(terms), spots);
    }

    /// The same, but the first is named even where its value is not to be told.
    void name(List<Spot> spots, Term first, Term... others) {
        var lines = new ArrayList<TextLine>();
        lines.add(line(first).orElseGet(() -> new TextLine(words.term(first), false)));
        lines.addAll(linesOf(others));
        write(lines, spots);
    }

    /// Writes a value without its sign, under a name that tells it, such as "tailwind" for a
    /// headwind below zero.
    void labelSize(List<Spot> spots, Term term, String name) {
        facts.writtenSize(term).ifPresent(size -> write(List.of(line(term, name, size)), spots));
    }

    /// The same with the name above the value, where there is little room across.
    void stack(List<Spot> spots, Term term, String name) {
        facts.writtenSize(term)
                .ifPresent(
                        size -> {
                            tell(term, name, size);
                            boolean isAsked = facts.isAsked(term);
                            write(
                                    List.of(
                                            new TextLine(name, isAsked),
                                            new TextLine(size, isAsked)),
                                    spots);
                        });
    }

    /// Writes a value alone, where an axis names it.
    void number(List<Spot> spots, Term term) {
        facts.written(term)
                .ifPresent(
                        value -> {
                            tell(term, words.term(term), value);
                            write(List.of(new TextLine(value, facts.isAsked(term))), spots);
                        });
    }

    void write(List<Spot> spots, String text) {
        write(List.of(new TextLine(text, false)), spots);
    }

    private void write(List<TextLine> lines, List<Spot> spots) {
        if (!lines.isEmpty()) {
            sheet.label(new Label(lines, spots));
        }
    }

    private List<TextLine> linesOf(Term... terms) {
        return Stream.of(terms).map(this::line).flatMap(Optional::stream).toList();
    }

    private Optional<TextLine> line(Term term) {
        return facts.written(term).map(value -> line(term, words.term(term), value));
    }

    private TextLine line(Term term, String name, String value) {
        tell(term, name, value);
        return new TextLine(words.labelled(name, value), facts.isAsked(term));
    }

    /// A text in a fixed place, such as a number at an axis.
    void fixed(String text, Point anchor, Point direction, double gap) {
        sheet.text(text, new Spot(anchor, direction, gap, 0));
    }

    /// A remark on the picture as a whole, in its lowest line and in the description.
    void note(String text) {
        fixed(text, new Point(2, sheet.height() - Lettering.HEIGHT / 2 - 2), Spots.RIGHT, 0);
        remark(text);
    }

    /// A sentence of the description only.
    void remark(String text) {
        remarks.add(text);
    }

    Drawing finish(Motif motif, String idPrefix) {
        var sentences = new ArrayList<String>();
        sentences.add(words.about(motif));
        told().ifPresent(sentences::add);
        asked().ifPresent(sentences::add);
        sentences.addAll(remarks);
        String title = words.title(motif);
        String description = String.join(" ", sentences);
        return new Drawing(sheet.finish(idPrefix, title, description), title, description);
    }

    private void tell(Term term, String name, String value) {
        if (facts.isStem() && facts.isAsked(term)) {
            asked.add(name);
        } else {
            told.add(words.labelled(name, value));
        }
    }

    private Optional<String> told() {
        return told.isEmpty() ? Optional.empty() : Optional.of(words.told(told));
    }

    private Optional<String> asked() {
        return asked.isEmpty() ? Optional.empty() : Optional.of(words.asked(asked));
    }
}
