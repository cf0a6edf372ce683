package org.groundline.diagram;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/// The elements that an illustration may have, and the attributes of each. No value can be more
/// than numbers, path letters, a transform or a known class.
enum Shape {
    SVG(),
    G(),
    PATH("d"),
    LINE("x1", "y1", "x2", "y2"),
    CIRCLE("cx", "cy", "r"),
    ELLIPSE("cx", "cy", "rx", "ry"),
    RECT("x", "y", "width", "height", "rx"),
    POLYLINE("points"),
    POLYGON("points"),
    TEXT("x", "y"),
    TSPAN("x", "y");

    private static final Set<String> CLASSES =
            Set.of("thick", "dashed", "faint", "asked", "head", "tone", "middle", "end");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,4}(\\.\\d{1,2})?");
    private static final Pattern NUMBERS = Pattern.compile("[-0-9., \\n]{1,4000}");
    private static final Pattern WAY = Pattern.compile("[-0-9., \\nMmLlHhVvCcSsQqTtAaZz]{1,8000}");
    private static final Pattern TRANSFORM =
            Pattern.compile("((translate|rotate|scale)\\([-0-9., ]{1,40}\\) ?){1,3}");

    private final List<String> attributes;

    Shape(String... attributes) {
        this.attributes = List.of(attributes);
    }

    static Optional<Shape> find(String element) {
        return Arrays.stream(values())
                .filter(shape -> shape != SVG && shape.element().equals(element))
                .findFirst();
    }

    static String names() {
        return String.join(
                " ", Arrays.stream(values()).filter(s -> s != SVG).map(Shape::element).toList());
    }

    String element() {
        return name().toLowerCase(Locale.ROOT);
    }

    boolean holdsText() {
        return this == TEXT || this == TSPAN;
    }

    boolean allows(String attribute, String value) {
        return switch (attribute) {
            case "class" -> CLASSES.containsAll(List.of(value.split(" +")));
            case "transform" -> this != TSPAN && TRANSFORM.matcher(value).matches();
            case "d" -> attributes.contains(attribute) && WAY.matcher(value).matches();
            case "points" -> attributes.contains(attribute) && NUMBERS.matcher(value).matches();
            default -> attributes.contains(attribute) && NUMBER.matcher(value).matches();
        };
    }

    String remedy(String attribute) {
        return switch (attribute) {
            case "class" ->
                    "use the classes " + String.join(" ", CLASSES.stream().sorted().toList());
            case "style", "fill", "stroke" -> "leave it out: the page gives colours and widths";
            default ->
                    "a <%s> may have class, transform and %s, with up to two decimals"
                            .formatted(element(), String.join(" ", attributes));
        };
    }
}
