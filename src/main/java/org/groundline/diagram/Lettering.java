package org.groundline.diagram;

/// How much room a text takes. The reader's font is not known, so the widths are those of a wide
/// sans-serif face: in another the text is shorter.
final class Lettering {
    /// The size of all text in a drawing, as the style sheet sets it.
    static final double SIZE = 14;

    static final double HEIGHT = 17;
    static final double ASCENT = 12;

    private static final String NARROW = " iljI.,:;'/|!\u202F";
    private static final String SLIM = "rtf°()s?-";
    private static final String BROAD = "mwMW−%≈";
    private static final double BOLD = 1.1;

    private Lettering() {}

    static double width(String text, boolean bold) {
        double width = text.codePoints().mapToDouble(Lettering::width).sum() * SIZE;
        return bold ? width * BOLD : width;
    }

    /// In parts of the text's size.
    private static double width(int character) {
        if (NARROW.indexOf(character) >= 0) {
            return 0.34;
        }
        if (SLIM.indexOf(character) >= 0) {
            return 0.5;
        }
        if (BROAD.indexOf(character) >= 0) {
            return 0.95;
        }
        return Character.isUpperCase(character) ? 0.75 : 0.64;
    }
}
