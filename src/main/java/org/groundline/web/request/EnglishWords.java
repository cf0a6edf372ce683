package org.groundline.web.request;

/// English.
record EnglishWords() implements Words {
    @Override
    public String myCourse() {
        return "My course";
    }

    @Override
    public String classBoard() {
        return "Class board";
    }

    @Override
    public String tests() {
        return "Tests";
    }

    @Override
    public String briefs() {
        return "Briefs";
    }

    @Override
    public String passRates() {
        return "Pass rates";
    }

    @Override
    public String questionBank() {
        return "Questions";
    }

    @Override
    public String people() {
        return "People";
    }

    @Override
    public String policy() {
        return "Policy";
    }

    @Override
    public String account() {
        return "Account";
    }

    @Override
    public String logOut() {
        return "Log out";
    }

    @Override
    public String skip() {
        return "Skip to the page";
    }

    @Override
    public String caution() {
        return "Theory only. It never replaces practical training with a licensed instructor, the manufacturer’s manual or the"
                + " rules of your country; local rules win.";
    }

    @Override
    public String notLoggedIn() {
        return "Not logged in";
    }

    @Override
    public String backToStart() {
        return "Back to the first page";
    }

    @Override
    public String pages() {
        return "Pages";
    }
}
