package org.groundline.web.staff.words;

/// The words of the pass rates.
public interface RateWords {
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

    String tooFew(int count);

    String reached(int reached, int students);

    String missed(int missed, int items);

    String students(int count);

    /// Returns the words in a language; English where there are none in it yet.
    static RateWords in(String language) {
        return new EnglishRateWords();
    }
}
