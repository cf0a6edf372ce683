package org.groundline.bank;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/// Writes JSON in the one form that RFC 8785 gives to a value: keys by their UTF-16 units, no
/// spaces, as few escapes as possible. Values are maps, lists, texts and truth values; numbers are
/// written as decimal texts by whoever calls, since a JSON number would pass through a double.
final class CanonicalJson {
    private CanonicalJson() {}

    static String write(Object value) {
        StringBuilder out = new StringBuilder();
        write(value, out);
        return out.toString();
    }

    /// The SHA-256 of a text's UTF-8 bytes in lower-case hexadecimal digits.
    static String hash(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }

    private static void write(Object value, StringBuilder out) {
        switch (value) {
            case String text -> writeText(text, out);
            case Boolean truth -> out.append(truth);
            case List<?> list -> writeList(list, out);
            case Map<?, ?> map -> writeMap(map, out);
            default ->
                    throw new IllegalArgumentException(
                            "only texts, truth values, lists and maps, not " + value.getClass());
        }
    }

    private static void writeList(List<?> list, StringBuilder out) {
        out.append('[');
        for (Iterator<?> i = list.iterator(); i.hasNext(); ) {
            write(i.next(), out);
            out.append(i.hasNext() ? "," : "");
        }
        out.append(']');
    }

    private static void writeMap(Map<?, ?> map, StringBuilder out) {
        Map<String, Object> sorted = new TreeMap<>();
        map.forEach((key, value) -> sorted.put((String) key, value));
        out.append('{');
        String separator = "";
        for (Map.Entry<String, Object> entry : sorted.entrySet()) {
            out.append(separator);
            writeText(entry.getKey(), out);
            out.append(':');
            write(entry.getValue(), out);
            separator = ",";
        }
        out.append('}');
    }

    private static void writeText(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\b' -> out.append("\\b");
                case '\f' -> out.append("\\f");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> out.append(c < 0x20 ? "\\u%04x".formatted((int) c) : String.valueOf(c));
            }
        }
        out.append('"');
    }
}
