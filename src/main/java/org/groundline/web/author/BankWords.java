package org.groundline.web.author;

import org.groundline.authoring.Event.Validity;

/// The words on the pages of authors and reviewers.
public interface BankWords {
    String questionBank();

    String search();

    String show();

    String any();

    String choice(String name);

    String found(int found, int all);

    String nothingFound();

    String before();

    String after();

    String newQuestion();

    String newTemplate();

    String textWithErrors();

    String notAsked();

    String id();

    String stem();

    String objective();

    String level();

    String kind();

    String stateName();

    String state(String word);

    String question(String id);

    String safetyCritical();

    String yesOrNo(boolean yes);

    String jurisdiction();

    String version();

    String origin();

    String origin(boolean shipped);

    String askedToday();

    String asStudentsSeeIt();

    String cannotBeShown();

    String key();

    String idea(String feedback);

    String accepted(String answer, String lowest, String highest, String unit);

    String mistakes();

    String rationale();

    String source();

    String twentyInstances();

    String instances();

    String instance(int number);

    String editions();

    String noEditions();

    String number();

    String author();

    String written();

    String reviewer();

    String validity();

    String validity(Validity days);

    String change();

    String somebody();

    String compare();

    String comparison(String id);

    String left();

    String right();

    String part();

    String changed();

    String same();

    String edit();

    String editShipped();

    String submit();

    String waitsForSecondPerson();

    String review();

    String reviewHint();

    String validFrom();

    String validUntil();

    String approve();

    String sendBack();

    String reason();

    String retire();

    String withdraw();

    String restore();

    String remarks();

    String noRemarks();

    String remark();

    String say();

    String notDone();

    String notKept();

    String writing();

    String writingHint();

    String idHint();

    String chooseObjective();

    String option(int number);

    String isKey();

    String misconception();

    String commonPractice();

    String sourceNumber(int number);

    String sourceAt();

    String noSource();

    String jurisdictionHint();

    String illustration();

    String noIllustration();

    String text();

    String textHint();

    String asText();

    String asForm();

    String changeKind();

    String editorial();

    String substantive();

    String check();

    String keep();

    String whatTheBankSays();

    String sound();

    String severity(String level);

    String line(int line);

    String ownLists();

    String ownListsHint();

    String export();

    String misconceptions();

    String sources();

    String noneYet();

    String wrong();

    String rightInstead();

    String feedback();

    String title();

    String publisher();

    String year();

    String read();

    String enterMisconception();

    String enterSource();

    String airLaw();

    String airLawHint();

    String stepCountry();

    String country();

    String packs();

    String pack(String code);

    String choose();

    String stepSources();

    String stepSourcesHint();

    String stepQuestions();

    String point();

    String toAsk();

    String live();

    String waiting();

    String writeOne();

    String covered(long covered, int all);

    String packLive();

    String packNotLive();

    String notChosen();

    String templateStart();

    /// Returns the words in a language; English where there are none in it yet.
    static BankWords in(String language) {
        return new EnglishBankWords();
    }
}
