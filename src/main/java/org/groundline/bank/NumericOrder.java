package org.groundline.bank;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Options that are all numbers of one unit, such as 20 km/h, 25 km/h and 30 km/h, or all marks in
/// a drawing, such as mark 1, mark 2 and mark 3, or place P and place Q. A reader looks them up
/// faster in ascending order, and the order then tells nothing about the key.
final class NumericOrder {
    private static final Pattern NUMBER =
            Pattern.compile("([-−]?\\d+(?:[.,]\\d+)?)(\\s*[^\\d\\s]*(?:\\s[^\\d\\s]+)?)");

    private static final Pattern MARK = Pattern.compile("([^\\d]+ )(\\d{1,2}|[P-Z])");

    private NumericOrder() {}

    /// Where an option belongs.
    ///
    /// @param kind what must be the same for all: the unit, or the words before the mark
    private record Place(String kind, BigDecimal number) {}

    private record Placed<T>(Place place, T option) {}

    /// The options in ascending order, or empty where they are not all such numbers or marks.
    static <T> Optional<List<T>> find(List<T> options, Function<T, String> text) {
        return ascending(options, text.andThen(NumericOrder::number))
                .or(() -> ascending(options, text.andThen(NumericOrder::mark)));
    }

    private static <T> Optional<List<T>> ascending(
            List<T> options, Function<T, Optional<Place>> place) {
        List<Placed<T>> placed = new ArrayList<>();
        for (T option : options) {
            place.apply(option).ifPresent(p -> placed.add(new Placed<>(p, option)));
        }
        long kinds = placed.stream().map(p -> p.place().kind()).distinct().count();
        return placed.size() == options.size() && kinds == 1
                ? Optional.of(
                        placed.stream()
                                .sorted(Comparator.comparing(p -> p.place().number()))
                                .map(Placed::option)
                                .toList())
                : Optional.empty();
    }

    private static Optional<Place> number(String text) {
        Matcher number = NUMBER.matcher(text);
        return number.matches()
                ? Optional.of(
                        new Place(
                                number.group(2),
                                new BigDecimal(
                                        number.group(1).replace('−', '-').replace(',', '.'))))
                : Optional.empty();
    }

    private static Optional<Place> mark(String text) {
        Matcher mark = MARK.matcher(text);
        return mark.matches()
                ? Optional.of(new Place(mark.group(1), rank(mark.group(2))))
                : Optional.empty();
    }

    /// Numbers come before letters.
    private static BigDecimal rank(String mark) {
        char first = mark.charAt(0);
        return Character.isDigit(first)
                ? new BigDecimal(mark)
                : BigDecimal.valueOf(100 + (long) first);
    }
}
