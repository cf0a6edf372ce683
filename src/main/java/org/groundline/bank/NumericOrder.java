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

    private record Numbered<T>(BigDecimal number, String unit, T option) {}

    /// The options in ascending order, or empty where they are not all such numbers or marks.
    static <T> Optional<List<T>> find(List<T> options, Function<T, String> text) {
        return numbers(options, text).or(() -> marks(options, text));
    }

    private static <T> Optional<List<T>> marks(List<T> options, Function<T, String> text) {
        List<Matcher> marks = options.stream().map(o -> MARK.matcher(text.apply(o))).toList();
        boolean alike =
                marks.stream().allMatch(Matcher::matches)
                        && marks.stream().map(m -> m.group(1)).distinct().count() == 1;
        Function<T, String> mark =
                option -> {
                    String words = text.apply(option);
                    return words.substring(words.lastIndexOf(' ') + 1);
                };
        return alike
                ? Optional.of(
                        options.stream()
                                .sorted(
                                        Comparator.<T>comparingInt(o -> mark.apply(o).length())
                                                .thenComparing(mark))
                                .toList())
                : Optional.empty();
    }

    private static <T> Optional<List<T>> numbers(List<T> options, Function<T, String> text) {
        List<Numbered<T>> numbered = new ArrayList<>();
        for (T option : options) {
            Matcher number = NUMBER.matcher(text.apply(option));
            if (!number.matches()) {
                return Optional.empty();
            }
            String digits = number.group(1).replace('−', '-').replace(',', '.');
            numbered.add(new Numbered<>(new BigDecimal(digits), number.group(2), option));
        }
        if (numbered.stream().map(Numbered::unit).distinct().count() != 1) {
            return Optional.empty();
        }
        return Optional.of(
                numbered.stream()
                        .sorted(Comparator.comparing(Numbered::number))
                        .map(Numbered::option)
                        .toList());
    }
}
