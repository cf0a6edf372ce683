package org.groundline.web.student;

/// English.
record EnglishCourseWords() implements CourseWords {
    @Override
    public String yourCourse() {
        return "Your course";
    }

    @Override
    public String lead(int signed, int modules) {
        return signed == modules
                ? "All %d modules are signed off.".formatted(modules)
                : "%d of %d modules are signed off.".formatted(signed, modules);
    }

    @Override
    public String howSigned() {
        return "Your instructor signs a module off once its test is passed, every safety-critical answer that was not right is talked over, and everything to be shown was seen.";
    }

    @Override
    public String tests() {
        return "Tests now";
    }

    @Override
    public String noTest() {
        return "No test is open for you now. Your instructor opens it; practice is always open.";
    }

    @Override
    public String running(String until) {
        return "You are sitting this test; it ends at " + until + ".";
    }

    @Override
    public String goOn() {
        return "Go on with the test";
    }

    @Override
    public String mayBeBegun(String until) {
        return "You may begin it until " + until + ".";
    }

    @Override
    public String readTheRules() {
        return "Read the rules, then begin";
    }

    @Override
    public String signedOff(String day, String instructor) {
        return "signed off %s by %s".formatted(day, instructor);
    }

    @Override
    public String ready() {
        return "ready to be signed off by your instructor";
    }

    @Override
    public String beingSat() {
        return "the test is being sat";
    }

    @Override
    public String passedSomeMissing(int talks, int demonstrations) {
        return "test passed; still missing: " + missing(talks, demonstrations);
    }

    @Override
    public String notPassed(String gained, String all) {
        return "the last test was not passed, with %s of %s".formatted(gained, all);
    }

    @Override
    public String notBegun() {
        return "no test sat yet";
    }

    @Override
    public String topic() {
        return "Topic (opens practice)";
    }

    @Override
    public String answered() {
        return "Practised";
    }

    @Override
    public String right() {
        return "Right";
    }

    @Override
    public String requirements() {
        return "For the sign-off";
    }

    @Override
    public String topicsAndEvidence() {
        return "Topics and evidence";
    }

    @Override
    public String met() {
        return "met";
    }

    @Override
    public String missing() {
        return "missing";
    }

    @Override
    public String toTalkOver() {
        return "to talk over";
    }

    @Override
    public String testPassed(String day, String gained, String all) {
        return "Test passed on %s, with %s of %s.".formatted(day, gained, all);
    }

    @Override
    public String testToPass() {
        return "A test of this module, passed.";
    }

    @Override
    public String askInstructor() {
        return "A safety-critical answer. Ask your instructor.";
    }

    @Override
    public String observed(String demonstration, String day) {
        return "%s. Seen on %s.".formatted(demonstration, day);
    }

    @Override
    public String toShow(String demonstration) {
        return demonstration + ", to be shown to your instructor.";
    }

    @Override
    public String results() {
        return "Results so far";
    }

    @Override
    public String noResult() {
        return "No test was handed in yet. Each result will be listed here with its questions and reasons.";
    }

    @Override
    public String module() {
        return "Test";
    }

    @Override
    public String marks() {
        return "Marks";
    }

    @Override
    public String marks(String gained, String all, String share) {
        return "%s of %s, %s".formatted(gained, all, share);
    }

    @Override
    public String outcome() {
        return "Outcome";
    }

    @Override
    public String passed() {
        return "passed";
    }

    @Override
    public String failed() {
        return "not passed";
    }

    private static String missing(int talks, int demonstrations) {
        String talk = talks == 1 ? "1 talk" : talks + " talks";
        String show = demonstrations == 1 ? "1 thing to show" : demonstrations + " things to show";
        return demonstrations == 0 ? talk : talks == 0 ? show : talk + ", " + show;
    }
}
