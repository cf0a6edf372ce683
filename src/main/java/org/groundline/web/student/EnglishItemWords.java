package org.groundline.web.student;

/// English.
record EnglishItemWords() implements ItemWords {
    @Override
    public String question() {
        return "Question";
    }

    @Override
    public String chooseOne() {
        return "Choose one answer";
    }

    @Override
    public String yourAnswerIn(String unit) {
        return unit.isEmpty() ? "Your answer, a plain number" : "Your answer, in " + unit;
    }

    @Override
    public String numberAdvice(String unit) {
        return unit.isEmpty()
                ? "Write a comma or a point."
                : "Write a comma or a point. Another unit is converted when you write it behind the number.";
    }

    @Override
    public String readAs(String echo) {
        return "Your answer: " + echo + ".";
    }

    @Override
    public String whichOfTwo(String typed, String one, String other) {
        return "You typed " + typed + ": is that " + one + " or " + other + "?";
    }

    @Override
    public String typeAnew() {
        return "Type it anew";
    }

    @Override
    public String practiceOf(String topic) {
        return "Practice: " + topic;
    }

    @Override
    public String answer() {
        return "Answer";
    }

    @Override
    public String nextQuestion() {
        return "Next question";
    }

    @Override
    public String backToCourse() {
        return "Back to the course";
    }

    @Override
    public String right() {
        return "right";
    }

    @Override
    public String wrong() {
        return "wrong";
    }

    @Override
    public String wrongAs() {
        return "wrong:";
    }

    @Override
    public String here(String feedback) {
        return "here: " + feedback;
    }

    @Override
    public String yourAnswer() {
        return "Your answer";
    }

    @Override
    public String rightAnswer() {
        return "Right answer";
    }

    @Override
    public String counted(String lowest, String highest) {
        return "anything from " + lowest + " to " + highest + " counts as right";
    }

    @Override
    public String why() {
        return "Why";
    }

    @Override
    public String source(String sources, String objective) {
        return "Source: " + sources + ". Objective " + objective + ".";
    }

    @Override
    public String keys() {
        return "Keys";
    }

    @Override
    public String useKeys() {
        return "Use these keys";
    }

    @Override
    public String keyLetters() {
        return "choose an answer";
    }

    @Override
    public String keyArrows() {
        return "back, next";
    }

    @Override
    public String keyFlag() {
        return "flag this question";
    }
}
