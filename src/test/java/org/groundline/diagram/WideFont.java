package org.groundline.diagram;

import org.w3c.dom.Element;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// The boxes of texts set in DejaVu Sans, one of the widest faces that a browser takes for
/// `sans-serif`.
///
/// Advance widths in thousandths of the size, as the font files (version 2.37) have them in their
/// table hmtx; its letters reach 0.76 above the line and 0.24 below.
final class WideFont {
    private static final double SIZE = 14;
    private static final Map<Character, Integer> BOOK =
            widths(
                    "200=\u202F",
                    "278=ijl",
                    "318= .,",
                    "337=:/",
                    "352=f",
                    "392=t",
                    "401=²³",
                    "411=r",
                    "500=°",
                    "521=s",
                    "525=z",
                    "531=?",
                    "550=c",
                    "579=k",
                    "592=vxy",
                    "612=o",
                    "613=a",
                    "615=e",
                    "634=hnu",
                    "635=bdgpqS",
                    "636=0123456789",
                    "603=P",
                    "611=T",
                    "656=K",
                    "698=C",
                    "748=N",
                    "752=H",
                    "770=D",
                    "787=Q",
                    "818=w",
                    "838=−",
                    "974=m");
    private static final Map<Character, Integer> BOLD =
            widths(
                    "200=\u202F",
                    "343=ijl",
                    "348= ",
                    "365=/",
                    "380=.,",
                    "400=:",
                    "435=f",
                    "438=²³",
                    "478=t",
                    "493=r",
                    "500=°",
                    "580=?",
                    "582=z",
                    "593=c",
                    "595=s",
                    "645=x",
                    "652=vy",
                    "665=k",
                    "675=a",
                    "678=e",
                    "687=o",
                    "696=0123456789",
                    "712=hnu",
                    "716=bdgpq",
                    "682=T",
                    "720=S",
                    "733=P",
                    "734=C",
                    "775=K",
                    "830=D",
                    "837=HN",
                    "838=−",
                    "850=Q",
                    "924=w",
                    "1042=m");

    private WideFont() {}

    static Box box(Element text) {
        var classes = List.of(text.getAttribute("class").split(" "));
        double width = width(text.getTextContent(), classes.contains("asked") ? BOLD : BOOK);
        double x = DrawnSvg.number(text, "x");
        double y = DrawnSvg.number(text, "y");
        double left = classes.contains("middle") ? x - width / 2 : x;
        double start = classes.contains("end") ? x - width : left;
        return new Box(start, y - 0.76 * SIZE, start + width, y + 0.24 * SIZE);
    }

    private static double width(String text, Map<Character, Integer> widths) {
        int sum = 0;
        for (char character : text.toCharArray()) {
            Integer width = widths.get(character);
            if (width == null) {
                throw new AssertionError("no width is known for “" + character + "” in " + text);
            }
            sum += width;
        }
        return sum * SIZE / 1000;
    }

    private static Map<Character, Integer> widths(String... groups) {
        var widths = new HashMap<Character, Integer>();
        Arrays.stream(groups)
                .map(group -> group.split("=", 2))
                .forEach(
                        group -> {
                            for (char character : group[1].toCharArray()) {
                                widths.put(character, Integer.valueOf(group[0]));
                            }
                        });
        return Map.copyOf(widths);
    }
}
