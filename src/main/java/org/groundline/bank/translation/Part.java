package org.groundline.bank.translation;

import org.groundline.ledger.Digests;

/// One English text of an original.
///
/// @param name what messages call it: the key in its file, or `option 2`
/// @param wording the limits that hold for it in every language
public record Part(String name, String text, Wording wording) {
    private static final String OPTION = "option ";
    private static final int MARK = 8;

    /// The option of a number, from 1.
    public static Part option(int number, String text, Wording wording) {
        return new Part(OPTION + number, text, wording);
    }

    boolean isOption() {
        return name.startsWith(OPTION);
    }

    /// The name in a sheet, where options go by letters in the author's order.
    String sheetName() {
        return isOption() ? OPTION + (char) ('A' + Integer.parseInt(name.substring(7)) - 1) : name;
    }

    /// A short mark by which it is known later whether the text was this one.
    String mark() {
        return Digests.hex(text).substring(0, MARK);
    }
}
