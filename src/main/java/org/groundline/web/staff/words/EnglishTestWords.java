package org.groundline.web.staff.words;

/// English.
record EnglishTestWords() implements TestWords {
    @Override
    public String tests() {
        return "Tests";
    }

    @Override
    public String openTest() {
        return "Open a test";
    }

    @Override
    public String hours() {
        return "Can be begun for";
    }

    @Override
    public String hoursUnit() {
        return "hours from now";
    }

    @Override
    public String place() {
        return "Place";
    }

    @Override
    public String openButton() {
        return "Open the test";
    }

    @Override
    public String openHint() {
        return "Each student who begins gets a paper of their own from the same rules. The time for the paper runs from the moment it is begun.";
    }

    @Override
    public String openedTests() {
        return "Opened tests";
    }

    @Override
    public String noTests() {
        return "No test was opened yet. Choose a module and an intake below.";
    }

    @Override
    public String state() {
        return "State";
    }

    @Override
    public String window() {
        return "Can be begun";
    }

    @Override
    public String openNow() {
        return "open now";
    }

    @Override
    public String closed() {
        return "closed";
    }

    @Override
    public String test() {
        return "Test";
    }

    @Override
    public String noIntakeYet() {
        return "There is no intake yet. The chief instructor begins one on the page People.";
    }

    @Override
    public String openedBy() {
        return "Opened by";
    }
}
