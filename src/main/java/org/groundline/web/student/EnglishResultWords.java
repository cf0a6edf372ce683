package org.groundline.web.student;

import org.groundline.sitting.Stakes;

/// English.
record EnglishResultWords() implements ResultWords {
    @Override
    public String test(Stakes stakes, String module) {
        return switch (stakes) {
            case PRACTICE -> "Practice: " + module;
            case PROGRESS -> "Progress test: " + module;
            case FINAL -> "Final test: " + module;
        };
    }

    @Override
    public String marks(String gained, String all, String share, String passMark) {
        return "%s of %s, %s. The pass mark is %s:".formatted(gained, all, share, passMark);
    }

    @Override
    public String passed() {
        return "passed";
    }

    @Override
    public String failed() {
        return "not passed";
    }

    @Override
    public String talks(int talks) {
        return talks == 1
                ? "One safety-critical answer needs a talk with your instructor."
                : talks + " safety-critical answers need a talk with your instructor.";
    }

    @Override
    public String allTalkedOver() {
        return "The safety-critical answers that were not right are talked over.";
    }

    @Override
    public String talkedOver() {
        return "talked over";
    }

    @Override
    public String settled() {
        return "You have explained it back to your instructor.";
    }

    @Override
    public String student() {
        return "Student";
    }

    @Override
    public String handedIn() {
        return "Handed in";
    }

    @Override
    public String afterMinutes(String when, long minutes) {
        return "%s, after %s".formatted(when, minutes == 1 ? "1 minute" : minutes + " minutes");
    }

    @Override
    public String byTheClock(String when) {
        return when + ", when the time was over; answers saved by then count";
    }

    @Override
    public String byStaff(String when) {
        return when + ", by the school";
    }

    @Override
    public String rules() {
        return "Taken under";
    }

    @Override
    public String rulesOf(int policy, String passMark) {
        return "Policy version %d, pass mark %s".formatted(policy, passMark);
    }

    @Override
    public String markedBy() {
        return "Marked by";
    }

    @Override
    public String versions(int scoring) {
        return "Scoring version " + scoring;
    }

    @Override
    public String byTopic() {
        return "By topic";
    }

    @Override
    public String topic() {
        return "Topic";
    }

    @Override
    public String right() {
        return "Right";
    }

    @Override
    public String of() {
        return "Of";
    }

    @Override
    public String share() {
        return "Share";
    }

    @Override
    public String all() {
        return "All";
    }

    @Override
    public String talksFirst() {
        return "To talk over with your instructor";
    }

    @Override
    public String missed() {
        return "Questions you missed";
    }

    @Override
    public String noneMissed() {
        return "None.";
    }

    @Override
    public String rightOnes() {
        return "Questions you answered rightly";
    }

    @Override
    public String noneRight() {
        return "None this time. Practice explains each question right after the answer.";
    }

    @Override
    public String safetyCritical() {
        return "safety-critical";
    }

    @Override
    public String given() {
        return "Your answer:";
    }

    @Override
    public String noAnswer() {
        return "No answer was given.";
    }

    @Override
    public String unanswered() {
        return "open";
    }

    @Override
    public String toTalkOver() {
        return "to talk over";
    }

    @Override
    public String askInstructor() {
        return "Ask your instructor. The module can be signed off after that talk.";
    }

    @Override
    public String why() {
        return "Why";
    }

    @Override
    public String version(String question, String version) {
        return "Question %s, version %s".formatted(question, version);
    }

    @Override
    public String practise() {
        return "Practise what you missed";
    }

    @Override
    public String backToCourse() {
        return "Back to the course";
    }
}
