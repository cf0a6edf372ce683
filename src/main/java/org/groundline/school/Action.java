package org.groundline.school;

/// What can be done, as the permissions file names it. Every route belongs to one.
public enum Action {
    READ_COURSE("course.read"),
    PRACTISE("practice.do"),
    READ_BRIEF("brief.read"),
    ACKNOWLEDGE_BRIEF("brief.acknowledge"),
    SIT("sitting.sit"),
    READ_RESULT("result.read"),
    READ_BOARD("board.read"),
    READ_STUDENT("student.read"),
    READ_OPENING("opening.read"),
    OPEN_TEST("opening.make"),
    ENTER_DEBRIEF("debrief.enter"),
    ENTER_DEMONSTRATION("demonstration.enter"),
    SIGN_OFF("sign-off.make"),
    REVERSE("sign-off.reverse"),
    READ_RATES("rates.read"),
    READ_BANK("bank.read"),
    WRITE_QUESTION("question.write"),
    REVIEW_QUESTION("question.review"),
    READ_PEOPLE("people.read"),
    MANAGE_PEOPLE("people.manage"),
    READ_POLICY("policy.read"),
    CHANGE_POLICY("policy.change"),
    USE_ACCOUNT("account.use");

    private final String word;

    Action(String word) {
        this.word = word;
    }

    /// The word in the permissions file.
    public String word() {
        return word;
    }
}
