package org.groundline.web.staff.words;

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
    public String signed(String day) {
        return "signed " + day;
    }

    @Override
    public String passed(int talks, int demonstrations) {
        return "passed"
                + (talks > 0 ? ", " + talks + (talks == 1 ? " talk open" : " talks open") : "")
                + (demonstrations > 0 ? ", " + demonstrations + " to be shown" : "");
    }

    @Override
    public String notPassed(String percent) {
        return "not passed, " + percent;
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
