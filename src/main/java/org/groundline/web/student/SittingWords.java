package org.groundline.web.student;

/// The words of a test that is being sat, in one language.
public interface SittingWords {
    String clock();

    String minutesLeft();

    String left();

    String until(String time);

    String fiveMinutes();

    String oneMinute();

    String timeIsOver();

    String questionOf(int position, int all);

    String allQuestions();

    String notAnswered();

    String saving();

    /// @param time empty for a script to fill in
    String saved(String time);

    String unsaved();

    String refused();

    String stays(String answer);

    String flag();

    String unflag();

    String flagged();

    String back();

    String next();

    String beforeYouHandIn();

    String open(int open, int all);

    String noPenalty();

    String answeredWord();

    String openWord();

    String sure(int open);

    String tickFirst();

    String backTo(int position);

    String handIn();

    /// Returns the words in a language; English where there are none in it yet.
    static SittingWords in(String language) {
        return new EnglishSittingWords();
    }
}
