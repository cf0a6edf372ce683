package org.groundline.web.student;

/// The words of the course page, in one language.
public interface CourseWords {
    String yourCourse();

    String lead(int signed, int modules);

    String tests();

    String noTest();

    String running(String until);

    String goOn();

    String mayBeBegun(String until);

    String readTheRules();

    String signedOff(String day);

    String ready();

    String beingSat();

    String passedSomeMissing(int talks, int demonstrations);

    String notPassed(String gained, String all);

    String notBegun();

    String topic();

    String answered();

    String right();

    String requirements();

    String met();

    String missing();

    String toTalkOver();

    String testPassed(String day, String gained, String all);

    String testToPass();

    String askAbout();

    String observed(String demonstration, String day);

    String toShow(String demonstration, String criteria);

    String results();

    String noResult();

    String module();

    String handedIn();

    String marks();

    String marks(String gained, String all, String share);

    String outcome();

    String passed();

    String failed();

    /// Returns the words in a language; English where there are none in it yet.
    static CourseWords in(String language) {
        return new EnglishCourseWords();
    }
}
