package org.groundline.web.staff.words;

/// The words of a student's record.
public interface RecordWords {
    String requirements();

    String met();

    String missing();

    String testPassed();

    String noTestYet();

    String talkedThrough();

    String nothingOpen();

    String toTalkThrough();

    String given();

    String unanswered();

    String outcome();

    String explainedBack();

    String notYetUnderstood();

    String note();

    String recordTalk();

    String observed();

    String observedToday();

    String signOff();

    String signing();

    String password();

    String opensWhenMet();

    String signOffs();

    String signedOffBy();

    String reversedBy();

    String reason();

    String reverse();

    String attempts();

    /// @param hundredths of marks gained, as is what was possible
    String attempt(int hundredths, int possible, String percent, String day);

    String openTalks(int open);

    String talksBefore(int talks);

    String stillMissing();

    String nothingMissing();

    String testMissing();

    String testBeingSat();

    String toShow(String demonstration);

    String signatureMissing();

    String recordDemonstration();

    /// Returns the words in a language; English where there are none in it yet.
    static RecordWords in(String language) {
        return new EnglishRecordWords();
    }
}
