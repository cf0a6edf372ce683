package org.groundline.web.staff;

/// The words of these pages, in one language.
public interface StaffWords {
    String classBoard();

    String student();

    String intake();

    String allIntakes();

    String show();

    String noStudents();

    String ready();

    String sittingNow();

    String notBegun();

    String erased();

    String requirements();

    String met();

    String missing();

    String testPassed();

    String noTestYet();

    String talkedThrough();

    String nothingOpen();

    String demonstrations();

    String toTalkThrough();

    String given();

    String unanswered();

    String outcome();

    String explainedBack();

    String notYetUnderstood();

    String note();

    String recordTalk();

    String observed();

    String notObserved();

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

    String result();

    String notSaved();

    String tests();

    String openTest();

    String module();

    String hours();

    String hoursUnit();

    String place();

    String openButton();

    String openHint();

    String openedTests();

    String noTests();

    String from();

    String until();

    String by();

    String openNow();

    String closed();

    String test();

    String noIntakeYet();

    String passRates();

    String topic();

    String counted();

    String sameInFigures();

    String said();

    String share();

    String range();

    String ratesCaption(String passMark);

    String howComputed();

    String howComputedText();

    String itemsMissed();

    String people();

    String name();

    String roles();

    String email();

    String enterPerson();

    String givenName();

    String familyName();

    String firstPassword();

    String firstPasswordHint();

    String role();

    String authorisation();

    String authNumber();

    String issuer();

    String validUntil();

    String enter();

    String intakes();

    String begins();

    String beginIntake();

    String beginsOn();

    String addStudent();

    String add();

    String noMembers();

    String policy();

    String rule();

    String value();

    String passMark();

    String topicItems();

    String numericShare();

    String studentsToSpeak();

    String changePolicy();

    String policyHint();

    String enterVersion();

    String percent();

    String items();

    String studentsUnit();

    String signed(String day);

    String passed(int talks, int demonstrations);

    String notPassed(String percent);

    String attempt(int hundredths, int possible, String day);

    String openTalks(int open);

    String talksBefore(int talks);

    String asOf(String time);

    String students(int count);

    String tooFew(int count);

    String reached(int reached, int students);

    String missed(int missed, int items);

    String version(int version, String since);

    /// Returns the words in a language; English where there are none in it yet.
    static StaffWords in(String language) {
        return new EnglishStaffWords();
    }
}
