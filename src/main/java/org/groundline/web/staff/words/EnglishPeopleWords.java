package org.groundline.web.staff.words;

/// English.
record EnglishPeopleWords() implements PeopleWords {
    @Override
    public String people() {
        return "People";
    }

    @Override
    public String name() {
        return "Name";
    }

    @Override
    public String roles() {
        return "Roles";
    }

    @Override
    public String email() {
        return "E-mail address";
    }

    @Override
    public String enterPerson() {
        return "Enter a person";
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
    public String firstPassword() {
        return "First password";
    }

    @Override
    public String firstPasswordHint() {
        return "At least 12 characters; a sentence is good. Give it to the person, who can change it under their name.";
    }

    @Override
    public String role() {
        return "Role";
    }

    @Override
    public String authorisation() {
        return "Authorisation, for instructors who sign";
    }

    @Override
    public String authNumber() {
        return "Number";
    }

    @Override
    public String issuer() {
        return "Issued by";
    }

    @Override
    public String validUntil() {
        return "Valid until";
    }

    @Override
    public String enter() {
        return "Enter";
    }

    @Override
    public String intakes() {
        return "Intakes";
    }

    @Override
    public String begins() {
        return "from";
    }

    @Override
    public String beginIntake() {
        return "Begin an intake";
    }

    @Override
    public String beginsOn() {
        return "Begins on";
    }

    @Override
    public String addStudents() {
        return "Put students into it";
    }

    @Override
    public String add() {
        return "Add";
    }

    @Override
    public String noMembers() {
        return "Nobody is in it yet.";
    }

    @Override
    public String students(int count) {
        return count + (count == 1 ? " student" : " students");
    }

    @Override
    public String everybody() {
        return "Everybody";
    }

    @Override
    public String noIntakes() {
        return "No intake yet. Students who begin together will stand here. Enter the students below, begin an intake, then put them into it.";
    }
}
