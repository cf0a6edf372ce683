package org.groundline.web.staff.words;

/// English.
record EnglishPolicyWords() implements PolicyWords {
    @Override
    public String policy() {
        return "Policy";
    }

    @Override
    public String rule() {
        return "Rule";
    }

    @Override
    public String value() {
        return "Value";
    }

    @Override
    public String passMark() {
        return "Pass mark of a paper";
    }

    @Override
    public String topicItems() {
        return "Items of a topic a sitting needs, to count for the topic’s rate";
    }

    @Override
    public String numericShare() {
        return "Numeric items in a paper, at most";
    }

    @Override
    public String studentsToSpeak() {
        return "Students below which a rate stays silent";
    }

    @Override
    public String changePolicy() {
        return "Enter the next version";
    }

    @Override
    public String policyHint() {
        return "Holds for sittings that begin from now on; each sitting keeps the version it was begun under.";
    }

    @Override
    public String enterVersion() {
        return "Enter this version";
    }

    @Override
    public String percent() {
        return "percent";
    }

    @Override
    public String items() {
        return "items";
    }

    @Override
    public String studentsUnit() {
        return "students";
    }

    @Override
    public String version(int version, String since) {
        return "Version %d, in force since %s".formatted(version, since);
    }
}
