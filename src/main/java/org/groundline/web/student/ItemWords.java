package org.groundline.web.student;

/// The words at an item, in practice and in a test, in one language.
public interface ItemWords {
    String question();

    String chooseOne();

    /// @param unit empty for a plain number
    String yourAnswerIn(String unit);

    /// @param unit empty for a plain number
    String numberAdvice(String unit);

    String readAs(String echo);

    /// Asks which of two numbers was meant.
    String whichOfTwo(String typed, String one, String other);

    String typeAnew();

    String practiceOf(String topic);

    String answer();

    String nextQuestion();

    String backToCourse();

    String right();

    String wrong();

    /// What stands before a clause that says what a wrong answer suggests.
    String wrongAs();

    /// @param feedback a clause that says what went wrong at a line of the worked solution
    String here(String feedback);

    String yourAnswer();

    String rightAnswer();

    String counted(String lowest, String highest);

    String why();

    String source(String sources, String objective);

    String keys();

    String useKeys();

    String keyLetters();

    String keyArrows();

    String keyFlag();

    /// Returns the words in a language; English where there are none in it yet.
    static ItemWords in(String language) {
        return new EnglishItemWords();
    }
}
