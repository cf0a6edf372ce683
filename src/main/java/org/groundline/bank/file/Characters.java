package org.groundline.bank.file;

import java.util.Optional;

/// Characters that no text of the bank may hold: controls, halves of a pair, signs that turn the
/// direction of writing, and those without a meaning.
public final class Characters {
    private Characters() {}

    /// The first forbidden character as `U+0007`. Every character of a bank comes by here, hence no
    /// stream.
    public static Optional<String> findForbidden(String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (isForbidden(text.codePointAt(i))) {
                return Optional.of("U+%04X".formatted(text.codePointAt(i)));
            }
        }
        return Optional.empty();
    }

    private static boolean isForbidden(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL -> c != '\n';
            case Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.PRIVATE_USE,
                    Character.FORMAT ->
                    true;
            default -> false;
        };
    }
}
