package org.groundline.bank.numeric.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/// A text with places for values, such as "You fly at {airspeed}", taken apart once.
///
/// @param pieces plain text and names in turn: the first, third … are text
public record Wording(List<String> pieces) {
    /// The name under which an explanation shows the answer.
    public static final String ANSWER = "answer";

    private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)}");

    private static Wording of(String text) {
        var pieces = new ArrayList<String>();
        var place = PLACE.matcher(text);
        int end = 0;
        while (place.find()) {
            pieces.add(text.substring(end, place.start()));
            pieces.add(place.group(1));
            end = place.end();
        }
        pieces.add(text.substring(end));
        return new Wording(List.copyOf(pieces));
    }

    /// Reads a text whose places may have the known names only.
    public static Wording of(String text, Set<String> known, String at, Faults faults) {
        var wording = of(text.strip());
        for (String name : wording.names()) {
            if (!known.contains(name)) {
                faults.add(
                        at,
                        "there is no value {%s}".formatted(name),
                        "use one of " + String.join(", ", known));
            }
        }
        if (wording.texts().anyMatch(t -> t.contains("{") || t.contains("}"))) {
            faults.add(at, "a brace stands alone", "write {name}");
        }
        return wording;
    }

    private Stream<String> texts() {
        return IntStream.range(0, pieces.size()).filter(i -> i % 2 == 0).mapToObj(pieces::get);
    }

    /// The names of its places in their order; one may come twice.
    public List<String> names() {
        var names = new ArrayList<String>();
        for (int i = 1; i < pieces.size(); i += 2) {
            names.add(pieces.get(i));
        }
        return names;
    }

    /// The text with values in its places, by name.
    public String with(Map<String, String> values) {
        var text = new StringBuilder();
        for (int i = 0; i < pieces.size(); i++) {
            String piece = pieces.get(i);
            text.append(i % 2 == 0 ? piece : values.getOrDefault(piece, piece));
        }
        return text.toString();
    }
}
