package org.groundline.web.account;

/// The words of these pages, in one language.
public interface AccountWords {
    String logIn();

    String email();

    String password();

    String forgotten();

    String whichSchool();

    String noSchool();

    String yourAccount();

    String yourRoles();

    String changePassword();

    String oldPassword();

    String newPassword();

    String passwordAdvice();

    String passwordChanged();

    String questionLanguage();

    String questionLanguageHint();

    /// @param language a BCP 47 tag
    String languageName(String language);

    String chooseLanguage();

    String languageChosen();

    String setUp();

    String setUpIntroduction();

    String schoolName();

    String schoolCode();

    String schoolCodeAdvice();

    String zone();

    String zoneAdvice();

    String chief();

    String givenName();

    String familyName();

    String setUpButton();

    /// Returns the words in a language; English where there are none in it yet.
    static AccountWords in(String language) {
        return new EnglishAccountWords();
    }
}
