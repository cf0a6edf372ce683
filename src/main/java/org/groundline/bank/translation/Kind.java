package org.groundline.bank.translation;

/// What is translated. The order is that of a sheet.
public enum Kind {
    MODULE("module", "modules"),
    TOPIC("topic", "topics"),
    OBJECTIVE("objective", "objectives"),
    MISCONCEPTION("misconception", "misconceptions"),
    QUESTION("question", "questions");

    private final String word;
    private final String list;

    Kind(String word, String list) {
        this.word = word;
        this.list = list;
    }

    public String word() {
        return word;
    }

    /// The key in a file under which they stand.
    String list() {
        return list;
    }
}
