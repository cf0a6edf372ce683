package org.groundline.web.staff.words;

/// English.
record EnglishBoardWords() implements BoardWords {
    @Override
    public String classBoard() {
        return "Class board";
    }

    @Override
    public String student() {
        return "Student";
    }

    @Override
    public String noStudents() {
        return "No students yet. Each student of the intake will stand here with where they are in each module. First the chief instructor enters students on the page People.";
    }

    @Override
    public String asOf(String intake, String time) {
        return intake + ", as of " + time;
    }

    @Override
    public String legend() {
        return "A name opens the student’s record, which begins with what is missing. ✓ signed on that day; ! passed, with something open; ✗ last test not passed; – not begun. Talk: a safety-critical answer that was not right, to be talked through with the student. To be shown: a demonstration nobody has observed yet.";
    }
}
