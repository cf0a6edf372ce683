package org.groundline.web.api;

/// Keeps out of texts what no keyboard types and no database keeps.
final class Plain {
    private Plain() {}

    static boolean isPlain(String text) {
        return text.codePoints().allMatch(Plain::isPlain);
    }

    private static boolean isPlain(int character) {
        boolean control = Character.isISOControl(character) && "\t\n\r".indexOf(character) < 0;
        boolean halved =
                character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        return !control && !halved;
    }
}
