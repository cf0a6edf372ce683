package org.groundline.web.author;

import org.groundline.authoring.Event.Validity;

/// English.
record EnglishBankWords() implements BankWords {
    @Override
    public String questionBank() {
        return "Questions";
    }

    @Override
    public String search() {
        return "Words to look for";
    }

    @Override
    public String show() {
        return "Show";
    }

    @Override
    public String any() {
        return "any";
    }

    @Override
    public String choice(String name) {
        return switch (name) {
            case "place" -> "Module, topic or objective";
            case "level" -> "Level";
            case "kind" -> "Kind";
            case "state" -> "State";
            default -> throw new IllegalArgumentException(name);
        };
    }

    @Override
    public String found(int found, int all) {
        return "%d of %d questions".formatted(found, all);
    }

    @Override
    public String nothingFound() {
        return "No question fits. Look for fewer words, or set a choice back to “any”.";
    }

    @Override
    public String before() {
        return "Earlier ones";
    }

    @Override
    public String after() {
        return "Further ones";
    }

    @Override
    public String newQuestion() {
        return "Write a question";
    }

    @Override
    public String newTemplate() {
        return "Write a numeric template";
    }

    @Override
    public String textWithErrors() {
        return "(a text that has errors)";
    }

    @Override
    public String notAsked() {
        return "not asked";
    }

    @Override
    public String id() {
        return "Id";
    }

    @Override
    public String stem() {
        return "Stem";
    }

    @Override
    public String objective() {
        return "Objective";
    }

    @Override
    public String level() {
        return "Level";
    }

    @Override
    public String kind() {
        return "Kind";
    }

    @Override
    public String stateName() {
        return "State";
    }

    @Override
    public String state(String word) {
        return word;
    }

    @Override
    public String question(String id) {
        return "Question " + id;
    }

    @Override
    public String safetyCritical() {
        return "Safety-critical";
    }

    @Override
    public String yesOrNo(boolean yes) {
        return yes ? "yes" : "no";
    }

    @Override
    public String jurisdiction() {
        return "Jurisdiction and edition";
    }

    @Override
    public String version() {
        return "Version";
    }

    @Override
    public String origin() {
        return "Origin";
    }

    @Override
    public String origin(boolean shipped) {
        return shipped ? "shipped with the program" : "written in this school";
    }

    @Override
    public String askedToday() {
        return "Asked today";
    }

    @Override
    public String asStudentsSeeIt() {
        return "As students see it";
    }

    @Override
    public String cannotBeShown() {
        return "The text has errors, so there is nothing to show yet.";
    }

    @Override
    public String key() {
        return "right";
    }

    @Override
    public String idea(String feedback) {
        return "wrong: " + feedback;
    }

    @Override
    public String accepted(String answer, String lowest, String highest, String unit) {
        return "Right: %s %s; accepted from %s to %s".formatted(answer, unit, lowest, highest);
    }

    @Override
    public String mistakes() {
        return "Known mistakes";
    }

    @Override
    public String rationale() {
        return "Rationale";
    }

    @Override
    public String source() {
        return "Source";
    }

    @Override
    public String twentyInstances() {
        return "Show twenty instances";
    }

    @Override
    public String instances() {
        return "Instances";
    }

    @Override
    public String instance(int number) {
        return "Instance " + number;
    }

    @Override
    public String editions() {
        return "Editions";
    }

    @Override
    public String noEditions() {
        return "This school has not changed it.";
    }

    @Override
    public String number() {
        return "Edition";
    }

    @Override
    public String author() {
        return "Author";
    }

    @Override
    public String written() {
        return "Written";
    }

    @Override
    public String reviewer() {
        return "Reviewer";
    }

    @Override
    public String validity() {
        return "Valid";
    }

    @Override
    public String validity(Validity days) {
        return days.until()
                .map(until -> "from %s to %s".formatted(days.from(), until))
                .orElseGet(() -> "from " + days.from());
    }

    @Override
    public String change() {
        return "Change";
    }

    @Override
    public String somebody() {
        return "somebody who has left";
    }

    @Override
    public String compare() {
        return "Compare editions";
    }

    @Override
    public String comparison(String id) {
        return "Editions of " + id;
    }

    @Override
    public String left() {
        return "Left";
    }

    @Override
    public String right() {
        return "Right";
    }

    @Override
    public String part() {
        return "Part";
    }

    @Override
    public String changed() {
        return "changed";
    }

    @Override
    public String same() {
        return "same";
    }

    @Override
    public String edit() {
        return "Change this question";
    }

    @Override
    public String editShipped() {
        return "Write an edition of this school";
    }

    @Override
    public String submit() {
        return "Submit for review";
    }

    @Override
    public String waitsForSecondPerson() {
        return "This is your text: it waits for a second person, who approves it or sends it back.";
    }

    @Override
    public String review() {
        return "Review";
    }

    @Override
    public String reviewHint() {
        return "Read stem, options, rationale and source as if you had never seen them. Is one answer right, and only one, at every school that will ask it? Would somebody who knows the subject choose it for the right reason? Is the source true to it?";
    }

    @Override
    public String validFrom() {
        return "Asked from";
    }

    @Override
    public String validUntil() {
        return "to (empty: until further notice)";
    }

    @Override
    public String approve() {
        return "Approve";
    }

    @Override
    public String sendBack() {
        return "Send back";
    }

    @Override
    public String reason() {
        return "Reason";
    }

    @Override
    public String retire() {
        return "Retire this edition";
    }

    @Override
    public String withdraw() {
        return "Withdraw from use in this school";
    }

    @Override
    public String restore() {
        return "Ask it again";
    }

    @Override
    public String remarks() {
        return "Remarks";
    }

    @Override
    public String noRemarks() {
        return "Nobody has remarked anything.";
    }

    @Override
    public String remark() {
        return "Your remark";
    }

    @Override
    public String say() {
        return "Write it down";
    }

    @Override
    public String notDone() {
        return "Nothing was changed.";
    }

    @Override
    public String notKept() {
        return "Not kept yet.";
    }

    @Override
    public String writing() {
        return "Write a question";
    }

    @Override
    public String writingHint() {
        return "Nothing is asked before a second person has approved it. A text with errors can be kept as a draft.";
    }

    @Override
    public String idHint() {
        return "Small letters, digits and hyphens, such as gust-before-launch. It stays for ever.";
    }

    @Override
    public String chooseObjective() {
        return "Choose an objective";
    }

    @Override
    public String option(int number) {
        return "Option %d".formatted(number);
    }

    @Override
    public String isKey() {
        return "This is the key";
    }

    @Override
    public String misconception() {
        return "Misconception behind it (none for the key)";
    }

    @Override
    public String commonPractice() {
        return "Common practice, no source";
    }

    @Override
    public String sourceNumber(int number) {
        return "Source %d".formatted(number);
    }

    @Override
    public String sourceAt() {
        return "Where in it";
    }

    @Override
    public String noSource() {
        return "none";
    }

    @Override
    public String jurisdictionHint() {
        return "For air law alone: the code, a colon, the regulation and its edition.";
    }

    @Override
    public String illustration() {
        return "Illustration";
    }

    @Override
    public String noIllustration() {
        return "none";
    }

    @Override
    public String text() {
        return "Text";
    }

    @Override
    public String textHint() {
        return "In the form of a topic file of the bank, with one question or template in it.";
    }

    @Override
    public String asText() {
        return "Write it as text instead";
    }

    @Override
    public String asForm() {
        return "Back to the form";
    }

    @Override
    public String changeKind() {
        return "Compared with what is asked now, this change is";
    }

    @Override
    public String editorial() {
        return "editorial: the same is asked in better words";
    }

    @Override
    public String substantive() {
        return "substantive: something else is asked, or something else is right";
    }

    @Override
    public String check() {
        return "Check and preview";
    }

    @Override
    public String keep() {
        return "Keep as draft";
    }

    @Override
    public String whatTheBankSays() {
        return "What the bank says";
    }

    @Override
    public String sound() {
        return "Nothing stands against it.";
    }

    @Override
    public String severity(String level) {
        return level;
    }

    @Override
    public String line(int line) {
        return "line %d: ".formatted(line);
    }

    @Override
    public String ownLists() {
        return "Own misconceptions and sources";
    }

    @Override
    public String export() {
        return "Own questions as files";
    }

    @Override
    public String ownListsHint() {
        return "What the questions of this school may name beside the shipped lists. Who enters an id again writes it anew: questions that name it then read as another version.";
    }

    @Override
    public String misconceptions() {
        return "Misconceptions";
    }

    @Override
    public String sources() {
        return "Sources";
    }

    @Override
    public String noneYet() {
        return "None yet.";
    }

    @Override
    public String wrong() {
        return "The wrong idea, in a sentence";
    }

    @Override
    public String rightInstead() {
        return "What is right, in a sentence";
    }

    @Override
    public String feedback() {
        return "Feedback, a clause that reads after “wrong: ”";
    }

    @Override
    public String title() {
        return "Title and edition";
    }

    @Override
    public String publisher() {
        return "Publisher";
    }

    @Override
    public String year() {
        return "Year (may be empty)";
    }

    @Override
    public String read() {
        return "How well it is known";
    }

    @Override
    public String enterMisconception() {
        return "Enter the misconception";
    }

    @Override
    public String enterSource() {
        return "Enter the source";
    }

    @Override
    public String airLaw() {
        return "Air law of your country";
    }

    @Override
    public String airLawHint() {
        return "What is shipped holds everywhere, or in the packs below. The law of a country is written by the school and read by a second person, because nobody else answers for it. Until each point has a live question, air law cannot be signed off.";
    }

    @Override
    public String stepCountry() {
        return "1. Choose whose law you teach";
    }

    @Override
    public String country() {
        return "Country (two letters, ISO 3166-1)";
    }

    @Override
    public String packs() {
        return "Shipped packs that hold there, too";
    }

    @Override
    public String pack(String code) {
        return switch (code) {
            case "EU" -> "EU: the rules of the air of the European Union";
            case "US" -> "US: federal rules for ultralight vehicles";
            default -> code;
        };
    }

    @Override
    public String choose() {
        return "Choose";
    }

    @Override
    public String stepSources() {
        return "2. Enter the regulations you will cite";
    }

    @Override
    public String stepSourcesHint() {
        return "Title, publisher and year of the edition you have before you; no question without its source.";
    }

    @Override
    public String stepQuestions() {
        return "3. Write at least one question on each point, and have it approved";
    }

    @Override
    public String point() {
        return "Point";
    }

    @Override
    public String toAsk() {
        return "What to ask";
    }

    @Override
    public String live() {
        return "Live";
    }

    @Override
    public String waiting() {
        return "On their way";
    }

    @Override
    public String writeOne() {
        return "Write one";
    }

    @Override
    public String covered(long covered, int all) {
        return "%d of %d points have a live question.".formatted(covered, all);
    }

    @Override
    public String packLive() {
        return "The pack is live: air law can be signed off.";
    }

    @Override
    public String packNotLive() {
        return "The pack is not live yet: air law cannot be signed off.";
    }

    @Override
    public String notChosen() {
        return "No country is chosen yet.";
    }

    @Override
    public String templateStart() {
        return """
        topic: AER-2
        templates:
          - id:
            objective: AER-2.3
            level: apply
            audience: core
            stem: >
              You fly straight at {airspeed} into a wind of {wind}. How fast do you move over the ground?
            draw:
              airspeed: {from: 34, to: 42, step: 1, unit: km/h}
              wind: {any-of: [10, 15, 20], unit: km/h}
            answer:
              formula: airspeed - wind
              unit: km/h
              round: 1
              tolerance: "0.5"
              between: [10, 40]
            mistakes:
              - misconception: wind-added
                formula: airspeed + wind
              - misconception: wind-ignored
                formula: airspeed
            worked:
              - given: {airspeed: 38 km/h, wind: 15 km/h}
                answer: 23 km/h
                source: derived
            explain: >
              {airspeed} against {wind} leave {answer}.
            source: common practice
        """;
    }
}
