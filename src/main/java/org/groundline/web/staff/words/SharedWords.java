package org.groundline.web.staff.words;

/// Words that several pages for staff share: the filter by intake, the states of a module, a form
/// that was refused.
public interface SharedWords {
    String intake();

    String allIntakes();

    String show();

    String ready();

    String sittingNow();

    String notBegun();

    String signed(String day);

    String passed(int talks, int demonstrations);

    String notPassed(String percent);

    String notSaved();

    String erased();

    String module();

    /// Returns the words in a language; English where there are none in it yet.
    static SharedWords in(String language) {
        return new EnglishSharedWords();
    }
}
