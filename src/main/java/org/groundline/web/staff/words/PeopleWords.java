package org.groundline.web.staff.words;

/// The words of the page of people and intakes.
public interface PeopleWords {
    String people();

    String name();

    String roles();

    String email();

    String enterPerson();

    String givenName();

    String familyName();

    String firstPassword();

    String firstPasswordHint();

    String role();

    String authorisation();

    String authNumber();

    String issuer();

    String validUntil();

    String enter();

    String intakes();

    String begins();

    String beginIntake();

    String beginsOn();

    String addStudents();

    String everybody();

    String noIntakes();

    String add();

    String noMembers();

    String students(int count);

    /// Returns the words in a language; English where there are none in it yet.
    static PeopleWords in(String language) {
        return new EnglishPeopleWords();
    }
}
