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

    /// Before the day of a signature.
    String signed();

    /// Before what is open after a passed test.
    String passed();

    String open(int talks, int demonstrations);

    /// Before the share of marks.
    String notPassed();

    String notSaved();

    String erased();

    String module();

    /// Returns the words in a language; English where there are none in it yet.
    static SharedWords in(String language) {
        return new EnglishSharedWords();
    }
}
