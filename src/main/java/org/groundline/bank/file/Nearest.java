package org.groundline.bank.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/// Guesses which known word was meant by an unknown one.
public final class Nearest {
    private Nearest() {}

    /// A remedy for an unknown word: the nearest known one, or where to find them.
    public static String remedy(String word, Collection<String> known, String otherwise) {
        return find(word, known).map(near -> "did you mean '" + near + "'?").orElse(otherwise);
    }

    /// The known word with the fewest changed letters, if at most a third of them (and at least
    /// one) would have to change.
    static Optional<String> find(String word, Collection<String> known) {
        return known.stream()
                .filter(k -> distance(word, k) <= Math.max(1, word.length() / 3))
                .min(Comparator.<String>comparingInt(k -> distance(word, k)).thenComparing(k -> k));
    }

    /// The Levenshtein distance: letters inserted, left out or replaced.
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
