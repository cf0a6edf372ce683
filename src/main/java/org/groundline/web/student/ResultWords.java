package org.groundline.web.student;

import org.groundline.sitting.Stakes;

/// The words of a result, in one language.
public interface ResultWords {
    String test(Stakes stakes, String module);

    String marks(String gained, String all, String share, String passMark);

    String passed();

    String failed();

    /// @param talks at least one
    String talks(int talks);

    String allTalkedOver();

    String student();

    String handedIn();

    String afterMinutes(String when, long minutes);

    String byTheClock(String when);

    String byStaff(String when);

    String rules();

    String rulesOf(int policy, String passMark);

    String markedBy();

    String versions(int scoring);

    String byTopic();

    String topic();

    String right();

    String of();

    String share();

    String all();

    String talksFirst();

    String missed();

    String noneMissed();

    String rightOnes();

    String noneRight();

    String safetyCritical();

    String given();

    String noAnswer();

    String unanswered();

    String toTalkOver();

    String askInstructor();

    String talkedOver();

    String settled();

    String why();

    String version(String question, String version);

    String practise();

    String backToCourse();

    /// Returns the words in a language; English where there are none in it yet.
    static ResultWords in(String language) {
        return new EnglishResultWords();
    }
}
