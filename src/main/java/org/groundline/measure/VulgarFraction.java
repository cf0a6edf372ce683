package org.groundline.measure;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/// A fraction in one character, such as ½, alone or after a whole number.
final class VulgarFraction {
    /// The fractions that are known, for use inside the brackets of a pattern.
    static final String CHARACTERS = "½¼¾⅛⅜⅝⅞⅓⅔⅙⅚⅐⅑";

    private static final Map<String, BigDecimal> EXACT =
            Map.of(
                    "½", new BigDecimal("0.5"),
                    "¼", new BigDecimal("0.25"),
                    "¾", new BigDecimal("0.75"),
                    "⅛", new BigDecimal("0.125"),
                    "⅜", new BigDecimal("0.375"),
                    "⅝", new BigDecimal("0.625"),
                    "⅞", new BigDecimal("0.875"));

    private static final Pattern MIXED =
            Pattern.compile("(?<whole>\\d*) ?(?<part>[" + CHARACTERS + "])");

    private VulgarFraction() {}

    /// The number; empty where it is written in another way, or is no decimal number.
    static Optional<BigDecimal> find(String text) {
        var mixed = MIXED.matcher(text);
        if (!mixed.matches()) {
            return Optional.empty();
        }
        String whole = mixed.group("whole");
        return Optional.ofNullable(EXACT.get(mixed.group("part")))
                .map(part -> whole.isEmpty() ? part : part.add(new BigDecimal(whole)));
    }

    /// The fraction in the text that has no exact decimal, such as ⅓.
    static Optional<String> findInexact(String text) {
        return text.codePoints()
                .mapToObj(Character::toString)
                .filter(c -> CHARACTERS.contains(c) && !EXACT.containsKey(c))
                .findFirst();
    }
}
