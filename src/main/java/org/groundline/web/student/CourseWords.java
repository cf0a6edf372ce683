package org.groundline.web.student;

/// The words of the course page, in one language.
public interface CourseWords {
    String yourCourse();

    String lead(int signed, int modules);

    String howSigned();

    String tests();

    String noTest();

    String running(String until);

    String goOn();

    String mayBeBegun(String until);

    String readTheRules();

    String signedOff(String day, String instructor);

    String ready();

    String beingSat();

    String passedSomeMissing(int talks, int demonstrations);

    String notPassed(String gained, String all);

    String notBegun();

    String topic();

    String answered();

    String right();

    String requirements();

    String topicsAndEvidence();

    String met();

    String missing();

    String toTalkOver();

    String testPassed(String day, String gained, String all);

    String testToPass();

    String askInstructor();

    String observed(String demonstration, String day);

    String toShow(String demonstration);

    String results();

    String noResult();

    String module();

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
