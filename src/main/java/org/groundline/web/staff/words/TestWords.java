package org.groundline.web.staff.words;

/// The words of the page of opened tests.
public interface TestWords {
    String tests();

    String openTest();

    String hours();

    String hoursUnit();

    String place();

    String openButton();

    String openHint();

    String openedTests();

    String noTests();

    String state();

    /// From when until when a test can be begun.
    String window();

    String openedBy();

    String openNow();

    String closed();

    String test();

    String noIntakeYet();

    /// Returns the words in a language; English where there are none in it yet.
    static TestWords in(String language) {
        return new EnglishTestWords();
    }
}
