package org.groundline.web.staff.words;

/// The words of the class board.
public interface BoardWords {
    String classBoard();

    String student();

    String noStudents();

    /// Whose board it is and when it was drawn.
    String asOf(String intake, String time);

    /// What the states ask for.
    String legend();

    /// Returns the words in a language; English where there are none in it yet.
    static BoardWords in(String language) {
        return new EnglishBoardWords();
    }
}
