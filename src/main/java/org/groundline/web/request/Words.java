package org.groundline.web.request;

/// The words around every page, in one language. Each group of pages has such an interface of its
/// own; a language is a class that implements it, so that a missing word fails to compile.
public interface Words {
    String myCourse();

    String classBoard();

    String tests();

    String briefs();

    String passRates();

    String questionBank();

    String people();

    String policy();

    String account();

    String logOut();

    /// What the list of links to the pages is called.
    String pages();

    String skip();

    String caution();

    String notLoggedIn();

    String backToStart();

    /// Returns the words in a language; English where there are none in it yet.
    ///
    /// @param language BCP 47
    static Words in(String language) {
        return new EnglishWords();
    }
}
