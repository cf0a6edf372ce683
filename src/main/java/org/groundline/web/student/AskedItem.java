package org.groundline.web.student;

import org.groundline.bank.Shown;
import org.groundline.diagram.Purpose;
import org.groundline.measure.TypedNumber.Way;
import org.groundline.sitting.Item;
import org.groundline.web.request.Figures;
import org.groundline.web.request.Markdown;

import java.util.List;
import java.util.stream.IntStream;

/// A question with a place for its answer, and nothing that only marking knows.
///
/// @param language of the stem and the options, a BCP 47 tag
/// @param stem as HTML
/// @param figures the drawing beside the stem, as HTML; empty where there is none
/// @param options empty where a number is to be typed
/// @param unit the unit of that number; empty for a plain one
/// @param given what stands in the answer's place
/// @param reading what the program read, such as "5.3 km = 5300 m"; empty where nothing was kept
/// @param message why the last answer was refused; empty where none was
/// @param ways the numbers that the answer could be, to choose from; empty where it is clear
public record AskedItem(
        ItemWords words,
        String language,
        String stem,
        String figures,
        List<Choice> options,
        String unit,
        String given,
        String reading,
        String message,
        List<Way> ways) {
    public AskedItem {
        options = List.copyOf(options);
        ways = List.copyOf(ways);
    }

    /// An option.
    ///
    /// @param text as HTML
    public record Choice(String letter, String text) {}

    /// What stands in the answer's place, and what is to be said about it.
    record Given(String text, String reading, String message, List<Way> ways) {
        static final Given NOTHING = new Given("", "", "");

        Given {
            ways = List.copyOf(ways);
        }

        Given(String text, String reading, String message) {
            this(text, reading, message, List.of());
        }

        /// An answer that could be two numbers.
        static Given unclear(String text, List<Way> ways) {
            return new Given(text, "", "", ways);
        }
    }

    static AskedItem of(ItemWords words, Item item, Given given) {
        Shown shown = item.shown();
        List<Choice> options =
                switch (shown) {
                    case Shown.Choice choice -> choices(choice);
                    case Shown.Number number -> List.of();
                };
        String unit = shown instanceof Shown.Number number ? number.unit() : "";
        return new AskedItem(
                words,
                item.language(),
                Markdown.inline(shown.stem()),
                Figures.html(shown.figures(), Purpose.STEM, "figure"),
                options,
                unit,
                given.text(),
                given.reading(),
                given.message(),
                given.ways());
    }

    static List<Choice> choices(Shown.Choice shown) {
        return IntStream.range(0, shown.options().size())
                .mapToObj(
                        i ->
                                new Choice(
                                        String.valueOf((char) ('A' + i)),
                                        Markdown.inline(shown.options().get(i))))
                .toList();
    }

    /// Whether a letter is to be chosen.
    public boolean choosing() {
        return !options.isEmpty();
    }

    /// Whether the student is to say which of two numbers was meant.
    public boolean unclear() {
        return !ways.isEmpty();
    }

    /// "You typed 1.200: is that 1.2 m or 1200 m?"
    public String whichOfTwo() {
        return words.whichOfTwo(given, ways.getFirst().label(), ways.getLast().label());
    }

    /// Whether the last answer was refused.
    public boolean refused() {
        return !message.isEmpty();
    }
}
