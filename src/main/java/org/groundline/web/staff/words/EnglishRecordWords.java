package org.groundline.web.staff.words;

import java.math.BigDecimal;

/// English.
record EnglishRecordWords() implements RecordWords {
    @Override
    public String requirements() {
        return "Requirements";
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
    public String testPassed() {
        return "Progress test passed";
    }

    @Override
    public String noTestYet() {
        return "No test was sat yet";
    }

    @Override
    public String talkedThrough() {
        return "Safety-critical answers talked through";
    }

    @Override
    public String nothingOpen() {
        return "None is open";
    }

    @Override
    public String toTalkThrough() {
        return "To talk through";
    }

    @Override
    public String given() {
        return "Answered";
    }

    @Override
    public String unanswered() {
        return "Not answered";
    }

    @Override
    public String outcome() {
        return "What came of the talk";
    }

    @Override
    public String explainedBack() {
        return "The student explained it back";
    }

    @Override
    public String notYetUnderstood() {
        return "Not yet understood";
    }

    @Override
    public String note() {
        return "Note (kept apart from the record, can be erased)";
    }

    @Override
    public String recordTalk() {
        return "Record the talk";
    }

    @Override
    public String observed() {
        return "observed";
    }

    @Override
    public String observedToday() {
        return "I observed it today";
    }

    @Override
    public String signOff() {
        return "Sign off";
    }

    @Override
    public String signing() {
        return "By signing you say that the student has understood the theory of this module. The entry cannot be edited; a mistake is put right by a reversal with a reason.";
    }

    @Override
    public String password() {
        return "Your password";
    }

    @Override
    public String opensWhenMet() {
        return "Opens when nothing is missing above.";
    }

    @Override
    public String signOffs() {
        return "Sign-offs";
    }

    @Override
    public String signedOffBy() {
        return "signed off by";
    }

    @Override
    public String reversedBy() {
        return "reversed by";
    }

    @Override
    public String reason() {
        return "Reason";
    }

    @Override
    public String reverse() {
        return "Reverse this sign-off";
    }

    @Override
    public String attempts() {
        return "Tests";
    }

    @Override
    public String attempt(int hundredths, int possible, String percent, String day) {
        String marks = BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString();
        return "%s of %d marks, %s, on %s".formatted(marks, possible / 100, percent, day);
    }

    @Override
    public String openTalks(int open) {
        return open
                + (open == 1
                        ? " answer still to be talked through"
                        : " answers still to be talked through");
    }

    @Override
    public String talksBefore(int talks) {
        return talks
                + (talks == 1
                        ? " talk so far, not yet understood"
                        : " talks so far, not yet understood");
    }

    @Override
    public String stillMissing() {
        return "Still missing";
    }

    @Override
    public String nothingMissing() {
        return "Nothing: all modules are signed off.";
    }

    @Override
    public String testMissing() {
        return "progress test not passed yet";
    }

    @Override
    public String testBeingSat() {
        return "progress test not passed yet; one is being sat";
    }

    @Override
    public String toShow(String demonstration) {
        return "to be shown: " + demonstration;
    }

    @Override
    public String signatureMissing() {
        return "only the signature";
    }

    @Override
    public String recordDemonstration() {
        return "Record the demonstration";
    }
}
