package org.groundline.ledger;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.stream.Collectors;

/// Writes JSON in the one form of RFC 8785 (JSON Canonicalization Scheme), for texts that are
/// hashed: members sorted by their UTF-16 code units, no white space, the shortest escapes. Takes
/// maps with text keys, lists, texts, booleans and whole numbers up to 2⁵³; other numbers are
/// written as decimal texts by the caller, since a hash must not hang on a floating-point printout.
public final class CanonicalJson {
    private static final long LARGEST = 1L << 53;

    private CanonicalJson() {}

    /// Returns the canonical text of a value.
    ///
    /// @throws IllegalArgumentException if it holds anything else than named above
    public static String of(Object value) {
        var out = new StringBuilder();
        write(value, out);
        return out.toString();
    }

    private static void write(Object value, StringBuilder out) {
        switch (value) {
            case String text -> quote(text, out);
            case Boolean truth -> out.append(truth);
            case Integer number -> out.append(number);
            case Long number when Math.abs(number) <= LARGEST -> out.append(number);
            case List<?> list -> writeList(list, out);
            case Map<?, ?> map -> writeMap(map, out);
            default ->
                    throw new IllegalArgumentException(
                            "no canonical JSON for " + value.getClass() + ": " + value);
        }
    }

    private static void writeList(List<?> list, StringBuilder out) {
        out.append('[');
        for (int i = 0; i < list.size(); i++) {
            if (i > 0) {
                out.append(',');
            }
            write(list.get(i), out);
        }
        out.append(']');
    }

    private static void writeMap(Map<?, ?> map, StringBuilder out) {
        List<? extends Entry<?, ?>> members =
                map.entrySet().stream()
                        .sorted(Comparator.comparing(e -> (String) e.getKey()))
                        .collect(Collectors.toList());
        out.append('{');
        for (int i = 0; i < members.size(); i++) {
            if (i > 0) {
                out.append(',');
            }
            quote((String) members.get(i).getKey(), out);
            out.append(':');
            write(members.get(i).getValue(), out);
        }
        out.append('}');
    }

    private static void quote(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\b' -> out.append("\\b");
                case '\t' -> out.append("\\t");
                case '\n' -> out.append("\\n");
                case '\f' -> out.append("\\f");
                case '\r' -> out.append("\\r");
                default -> {
                    if (c < 0x20) {
                        out.append("\\u%04x".formatted((int) c));
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        out.append('"');
    }
}
