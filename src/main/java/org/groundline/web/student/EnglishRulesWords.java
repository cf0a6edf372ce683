package org.groundline.web.student;

import java.util.List;

/// English.
record EnglishRulesWords() implements RulesWords {
    @Override
    public String questions() {
        return "Questions";
    }

    @Override
    public String time() {
        return "Time";
    }

    @Override
    public String minutes(int minutes) {
        return minutes + " minutes, counted from the moment you begin";
    }

    @Override
    public String passMark() {
        return "Pass mark";
    }

    @Override
    public String ofTheMarks(String share) {
        return share + " of the marks; one mark a question, none taken off for a wrong answer";
    }

    @Override
    public String aids() {
        return "Aids";
    }

    @Override
    public String aidsAllowed() {
        return "Pen and paper. The numbers are made for head arithmetic; anything else only if your instructor says so.";
    }

    @Override
    public String place() {
        return "Place";
    }

    @Override
    public String beginBy() {
        return "Begin before";
    }

    @Override
    public List<String> sentences() {
        return List.of(
                "Every answer is saved at once. If the connection fails, the page keeps your answer and tries again.",
                "You may go back, change answers and flag questions until you hand in. If you change to another device, log in there"
                        + " and go on; the clock does not stop.",
                "Whether an answer is right is not shown before you hand in. Afterwards you see every question with its answer and the"
                        + " reason.",
                "When the time is over the test hands itself in, with every answer saved by then. An open question counts as wrong.",
                "Safety-critical questions that you do not answer rightly are talked over with your instructor, even if you pass.",
                "A passed test is no permission to fly. Your instructor signs the theory off, and theory never replaces practical"
                        + " training.");
    }

    @Override
    public String begin() {
        return "Begin the test now";
    }

    @Override
    public String goOn() {
        return "Go on with the test";
    }

    @Override
    public String notOpen(String from, String until) {
        return "This test may be begun from %s until %s. Ask your instructor to open it again."
                .formatted(from, until);
    }

    @Override
    public String backToCourse() {
        return "Back to the course";
    }
}
