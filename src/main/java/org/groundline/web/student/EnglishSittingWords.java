package org.groundline.web.student;

/// English.
record EnglishSittingWords() implements SittingWords {
    @Override
    public String clock() {
        return "Clock";
    }

    @Override
    public String minutesLeft() {
        return "minutes left";
    }

    @Override
    public String left() {
        return "left";
    }

    @Override
    public String until(String time) {
        return "until " + time;
    }

    @Override
    public String fiveMinutes() {
        return "Five minutes are left.";
    }

    @Override
    public String oneMinute() {
        return "One minute is left.";
    }

    @Override
    public String timeIsOver() {
        return "The time is over. Your test is being handed in with the answers that are saved.";
    }

    @Override
    public String questionOf(int position, int all) {
        return "Question %d of %d".formatted(position, all);
    }

    @Override
    public String allQuestions() {
        return "All questions";
    }

    @Override
    public String notAnswered() {
        return "not answered yet";
    }

    @Override
    public String saving() {
        return "saving";
    }

    @Override
    public String saved(String time) {
        return "saved " + time;
    }

    @Override
    public String unsaved() {
        return "not saved yet, trying again";
    }

    @Override
    public String refused() {
        return "not saved";
    }

    @Override
    public String stays(String answer) {
        return "An answer can be changed but not taken away. “%s” stays saved.".formatted(answer);
    }

    @Override
    public String flag() {
        return "Flag";
    }

    @Override
    public String unflag() {
        return "Unflag";
    }

    @Override
    public String flagged() {
        return "flagged";
    }

    @Override
    public String back() {
        return "Back";
    }

    @Override
    public String next() {
        return "Next";
    }

    @Override
    public String beforeYouHandIn() {
        return "Before you hand in";
    }

    @Override
    public String open(int open, int all) {
        return open == 0
                ? "All %d questions are answered.".formatted(all)
                : open == 1
                        ? "One of %d questions is still open.".formatted(all)
                        : "%d of %d questions are still open.".formatted(open, all);
    }

    @Override
    public String noPenalty() {
        return "An open question counts as wrong; nothing is taken off for trying.";
    }

    @Override
    public String answeredWord() {
        return "answered";
    }

    @Override
    public String openWord() {
        return "open";
    }

    @Override
    public String sure(int open) {
        return open == 0
                ? "I have finished and hand this test in."
                : open == 1
                        ? "I have finished and hand this test in with one open question."
                        : "I have finished and hand this test in with %d open questions."
                                .formatted(open);
    }

    @Override
    public String tickFirst() {
        return "Nothing was handed in. Tick that you have finished, then hand in.";
    }

    @Override
    public String backTo(int position) {
        return "Back to question " + position;
    }

    @Override
    public String handIn() {
        return "Hand in";
    }
}
