package org.groundline.sitting;

import org.groundline.bank.Questions;
import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.jooq.DSLContext;

import java.util.List;

/// In which language somebody is asked. A choice counts for what is posed from then on; items that
/// were posed keep their language.
public final class QuestionLanguages {
    /// The language of the bank.
    static final String DEFAULT = "en";

    private final Foundation foundation;
    private final Questions bank;

    public QuestionLanguages(Foundation foundation, Questions bank) {
        this.foundation = foundation;
        this.bank = bank;
    }

    /// The languages in which the bank has questions, as BCP 47 tags, English first.
    public List<String> listLanguages() {
        return bank.translations().languages();
    }

    /// Returns the actor's language.
    public String languageOf(Actor actor) {
        actor.requireAtAll(Action.USE_ACCOUNT);
        SchoolId school = actor.school().id();
        return foundation
                .database()
                .inSchool(school, tx -> languageOf(tx, school, actor.subject()));
    }

    /// Returns the language somebody chose, as a BCP 47 tag; English where they chose none.
    static String languageOf(DSLContext tx, SchoolId school, SubjectId subject) {
        return new QuestionLanguageRepository(tx, school).find(subject).orElse(DEFAULT);
    }

    /// Chooses a language for the actor.
    ///
    /// @throws Refusal.Invalid if the bank has no question in it
    public void choose(Actor actor, String language) {
        actor.requireAtAll(Action.USE_ACCOUNT);
        if (!listLanguages().contains(language)) {
            throw new Refusal.Invalid(
                    "language",
                    "There are questions in these languages: %s."
                            .formatted(String.join(", ", listLanguages())));
        }
        SchoolId school = actor.school().id();
        foundation
                .database()
                .inSchool(
                        school,
                        tx -> {
                            new QuestionLanguageRepository(tx, school)
                                    .put(actor.subject(), language);
                            return true;
                        });
    }
}
