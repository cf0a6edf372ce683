package org.groundline.web.staff.words;

import static java.util.stream.Collectors.joining;

import java.util.stream.Stream;

/// English.
record EnglishSharedWords() implements SharedWords {
    @Override
    public String intake() {
        return "Intake";
    }

    @Override
    public String allIntakes() {
        return "All intakes";
    }

    @Override
    public String show() {
        return "Show";
    }

    @Override
    public String ready() {
        return "ready";
    }

    @Override
    public String sittingNow() {
        return "sitting a test";
    }

    @Override
    public String notBegun() {
        return "not begun";
    }

    @Override
    public String signed() {
        return "signed";
    }

    @Override
    public String passed() {
        return "passed,";
    }

    @Override
    public String open(int talks, int demonstrations) {
        return Stream.of(
                        talks == 0 ? "" : talks + (talks == 1 ? " talk open" : " talks open"),
                        demonstrations == 0 ? "" : demonstrations + " to be shown")
                .filter(part -> !part.isEmpty())
                .collect(joining(", "));
    }

    @Override
    public String notPassed() {
        return "not passed,";
    }

    @Override
    public String notSaved() {
        return "Not saved.";
    }

    @Override
    public String erased() {
        return "(erased)";
    }

    @Override
    public String module() {
        return "Module";
    }
}
