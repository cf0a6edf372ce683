package org.groundline.sitting;

import org.groundline.authoring.SchoolBanks;
import org.groundline.bank.Posed;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.bank.TranslatedQuestion;
import org.groundline.chance.SeededDraw;
import org.groundline.database.SchoolId;
import org.groundline.ledger.Foundation;
import org.groundline.school.School;
import org.groundline.sitting.ItemRepository.NewItem;
import org.groundline.sitting.ItemRepository.NewPaper;
import org.groundline.sitting.ItemRepository.NewVersion;
import org.jooq.DSLContext;

import java.security.SecureRandom;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongSupplier;
import java.util.stream.Stream;

/// Poses questions: turns them into items and freezes these. The seed of a paper comes from whoever
/// opens the doors, as a rule from the machine's secure generator, so that nobody can foretell a
/// paper; everything after it follows from the seed.
final class Posing {
    private final Foundation foundation;
    private final SchoolBanks banks;
    private final LongSupplier seeds;

    Posing(Foundation foundation, SchoolBanks banks, LongSupplier seeds) {
        this.foundation = foundation;
        this.banks = banks;
        this.seeds = seeds;
    }

    /// Seeds that nobody can foretell.
    static LongSupplier secureSeeds() {
        return new SecureRandom()::nextLong;
    }

    /// Draws an order of questions.
    List<Question> shuffle(List<Question> questions) {
        return new SeededDraw(seeds.getAsLong()).shuffle(questions);
    }

    /// A question in the language in which it is put: that of its translation where there is one,
    /// else English.
    private record Worded(Question question, Optional<TranslatedQuestion> translated) {
        String language() {
            return translated.map(TranslatedQuestion::language).orElse(QuestionLanguages.DEFAULT);
        }

        String version() {
            return translated.map(TranslatedQuestion::version).orElseGet(question::version);
        }
    }

    private Worded worded(Question question, String language) {
        return new Worded(question, banks.shipped().translations().find(language, question));
    }

    /// Assembles a paper by a blueprint and returns its id.
    ///
    /// @param language in which its student wants to be asked
    UUID assemble(DSLContext tx, School school, Blueprint blueprint, String language) {
        long seed = seeds.getAsLong();
        Questions bank = banks.in(tx, school);
        UUID paper =
                newPaper(
                        tx,
                        school.id(),
                        bank,
                        blueprint.stakes(),
                        Optional.of(blueprint.id()),
                        seed);
        List<Worded> questions =
                new PaperDraw(bank, blueprint, seed)
                        .questions().stream().map(q -> worded(q, language)).toList();
        keepVersions(tx, school.id(), questions);
        for (int i = 0; i < questions.size(); i++) {
            pose(
                    tx,
                    school,
                    new Place(paper, i + 1, new SeededDraw(seed).childSeed("item " + (i + 1))),
                    questions.get(i));
        }
        return paper;
    }

    /// Begins the paper of a practice, which grows by the item.
    UUID beginPractice(DSLContext tx, School school) {
        return newPaper(
                tx,
                school.id(),
                banks.in(tx, school),
                Stakes.PRACTICE,
                Optional.empty(),
                seeds.getAsLong());
    }

    /// Where the next item of a practice goes, and the language in which its student wants to be
    /// asked.
    record Next(UUID paper, int position, String language) {}

    /// Poses one more question on a practice's paper.
    Item poseNext(DSLContext tx, School school, Next next, Question question) {
        Worded worded = worded(question, next.language());
        keepVersions(tx, school.id(), List.of(worded));
        var place = new Place(next.paper(), next.position(), seeds.getAsLong());
        return pose(tx, school, place, worded);
    }

    /// Copies the versions of the questions into the school where it lacks them, in the order of
    /// their hashes: two papers assembled at once would otherwise wait for each other. With a
    /// translation comes the English that it follows, which holds the key and the sources.
    private void keepVersions(DSLContext tx, SchoolId school, List<Worded> questions) {
        var items = new ItemRepository(tx, school);
        questions.stream()
                .flatMap(Posing::versions)
                .sorted(Comparator.comparing(NewVersion::version))
                .forEach(version -> items.insertQuestionVersion(version, foundation.now()));
    }

    private static Stream<NewVersion> versions(Worded worded) {
        Question question = worded.question();
        return Stream.concat(
                Stream.of(new NewVersion(question.version(), question.id(), question.canonical())),
                worded.translated().stream()
                        .map(t -> new NewVersion(t.version(), question.id(), t.canonical())));
    }

    private UUID newPaper(
            DSLContext tx,
            SchoolId school,
            Questions bank,
            Stakes stakes,
            Optional<UUID> blueprint,
            long seed) {
        UUID paper = foundation.ids().next();
        new ItemRepository(tx, school)
                .insertPaper(
                        new NewPaper(
                                paper,
                                stakes,
                                blueprint,
                                seed,
                                SeededDraw.version(),
                                bank.hash(),
                                foundation.now()));
        return paper;
    }

    /// Where an item goes, and what it is drawn with.
    private record Place(UUID paper, int position, long seed) {}

    private Item pose(DSLContext tx, School school, Place place, Worded worded) {
        Question question = worded.question();
        Posed posed =
                worded.translated()
                        .map(translated -> translated.pose(place.seed()))
                        .orElseGet(() -> banks.shipped().pose(question, place.seed()));
        UUID id = foundation.ids().next();
        new ItemRepository(tx, school.id())
                .insertItem(
                        new NewItem(
                                id,
                                place.paper(),
                                place.position(),
                                place.seed(),
                                worded.version(),
                                worded.language(),
                                question,
                                posed));
        new KeyRepository(tx, school.id()).insert(id, posed.key());
        return new Item(
                id,
                place.position(),
                question.id(),
                worded.version(),
                worded.language(),
                question.topic(),
                question.objective(),
                question.safetyCritical(),
                posed.shown());
    }
}
