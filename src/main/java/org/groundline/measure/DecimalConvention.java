package org.groundline.measure;

/// How a language writes decimals; it decides what `1.200` means.
public enum DecimalConvention {
    DOT('.'),
    COMMA(',');

    private final char mark;

    DecimalConvention(char mark) {
        this.mark = mark;
    }

    /// The other one.
    DecimalConvention other() {
        return this == DOT ? COMMA : DOT;
    }

    public char mark() {
        return mark;
    }
}
