package org.groundline.web.student;

import java.util.List;

/// The words of the rules before a test, in one language.
public interface RulesWords {
    String questions();

    String time();

    String minutes(int minutes);

    String passMark();

    String ofTheMarks(String share);

    String aids();

    String aidsAllowed();

    String place();

    String beginBy();

    /// What holds for every test, a sentence each.
    List<String> sentences();

    String begin();

    String goOn();

    String notOpen(String from, String until);

    String backToCourse();

    /// Returns the words in a language; English where there are none in it yet.
    static RulesWords in(String language) {
        return new EnglishRulesWords();
    }
}
