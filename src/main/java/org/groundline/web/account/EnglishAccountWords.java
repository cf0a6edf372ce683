package org.groundline.web.account;

import java.util.Locale;

/// English.
record EnglishAccountWords() implements AccountWords {
    @Override
    public String logIn() {
        return "Log in";
    }

    @Override
    public String email() {
        return "E-mail address";
    }

    @Override
    public String password() {
        return "Password";
    }

    @Override
    public String forgotten() {
        return "Forgotten it? Ask your school; it can give you a new one.";
    }

    @Override
    public String whichSchool() {
        return "Which school?";
    }

    @Override
    public String noSchool() {
        return "There is no school on this server yet. Its operator finds a set-up link where the server was started.";
    }

    @Override
    public String yourAccount() {
        return "Your account";
    }

    @Override
    public String yourRoles() {
        return "Your roles in this school";
    }

    @Override
    public String changePassword() {
        return "Change password";
    }

    @Override
    public String oldPassword() {
        return "Present password";
    }

    @Override
    public String newPassword() {
        return "New password";
    }

    @Override
    public String passwordAdvice() {
        return "At least 12 characters. A short sentence is fine.";
    }

    @Override
    public String passwordChanged() {
        return "Your password is changed. Other devices were logged out.";
    }

    @Override
    public String questionLanguage() {
        return "Language of questions";
    }

    @Override
    public String questionLanguageHint() {
        return "A question without a translation is put in English. What was put to you before stays as it is.";
    }

    @Override
    public String languageName(String language) {
        return Locale.forLanguageTag(language).getDisplayLanguage(Locale.ENGLISH);
    }

    @Override
    public String chooseLanguage() {
        return "Use this language";
    }

    @Override
    public String languageChosen() {
        return "New questions come in this language, where they are translated.";
    }

    @Override
    public String setUp() {
        return "Set up a school";
    }

    @Override
    public String setUpIntroduction() {
        return "This link works once. It makes the school and its chief instructor; everybody else is entered from inside.";
    }

    @Override
    public String schoolName() {
        return "Name of the school";
    }

    @Override
    public String schoolCode() {
        return "Short code";
    }

    @Override
    public String schoolCodeAdvice() {
        return "Stands in every address of the school: small letters, digits and hyphens.";
    }

    @Override
    public String zone() {
        return "Time zone";
    }

    @Override
    public String zoneAdvice() {
        return "Such as Europe/Vienna. Days are counted in it.";
    }

    @Override
    public String chief() {
        return "Chief instructor";
    }

    @Override
    public String givenName() {
        return "Given name";
    }

    @Override
    public String familyName() {
        return "Family name";
    }

    @Override
    public String setUpButton() {
        return "Set up";
    }
}
