package org.groundline.bank;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import org.groundline.error.Refusal;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/// The loaded question bank: sound, immutable, and answering every look-up from memory.
public final class Questions {
    private final List<Question> all;
    private final Map<String, Question> byId;
    private final Map<String, List<Question>> byTopic;
    private final Map<String, List<Question>> byModule;
    private final Map<String, Misconception> misconceptions;
    private final Map<String, Objective> objectives;
    private final Map<String, Brief> briefs;
    private final Shipped shipped;
    private final SchoolUse use;
    private final String hash;

    /// What came with the program beside the questions.
    ///
    /// @param texts where the questions were written, by id
    record Shipped(
            Course course,
            List<Brief> briefs,
            Lists lists,
            Map<String, QuestionTexts.Written> texts,
            Translations translations) {}

    private Questions(BankCheck check) {
        this(
                check.questions(),
                new Shipped(
                        check.course(),
                        check.briefs(),
                        check.lists(),
                        check.texts(),
                        new Translations(check)),
                SchoolUse.AS_SHIPPED);
    }

    private Questions(List<Question> questions, Shipped shipped, SchoolUse use) {
        this.shipped = shipped;
        this.use = use;
        all = questions.stream().sorted(Comparator.comparing(Question::id)).toList();
        byId = index(all, Question::id);
        byTopic = all.stream().filter(use::asks).collect(groupingBy(Question::topic));
        byModule = all.stream().collect(groupingBy(Question::module));
        misconceptions = index(shipped.lists().misconceptions().values(), Misconception::id);
        objectives =
                index(
                        shipped.course().modules().stream()
                                .flatMap(m -> m.topics().stream())
                                .flatMap(t -> t.objectives().stream())
                                .toList(),
                        Objective::id);
        briefs = index(shipped.briefs(), Brief::topic);
        hash = BankHash.of(all, shipped, use);
    }

    /// This bank as a school uses it, to be asked for another use as this one.
    public Questions usedAs(SchoolUse use) {
        Map<String, Question> questions = new TreeMap<>(byId);
        use.own().forEach(own -> questions.put(own.id(), own));
        return new Questions(List.copyOf(questions.values()), shipped, use);
    }

    /// Reads a text that is written as a topic file with one question in it, whose id may be that
    /// of a question of the bank. Everything in it is examined.
    public Manuscript read(String text, OwnLists own) {
        return new ManuscriptReader(shipped.lists().forManuscript(own)).read(text);
    }

    /// The school's own questions among these.
    public List<Question> own() {
        return use.own();
    }

    /// Whether students may be asked a question of this bank.
    public boolean asks(Question question) {
        return use.asks(question);
    }

    /// The question of this id if students may be asked it.
    public Optional<Question> findAsked(String id) {
        return findQuestion(id).filter(use::asks);
    }

    /// The text that a shipped question was written as, in a form that [#read] takes; empty where
    /// no such question is shipped.
    public Optional<String> findText(String id) {
        return Optional.ofNullable(shipped.texts().get(id)).map(QuestionTexts.Written::text);
    }

    /// Loads a bank, whose folder may also be inside an archive.
    ///
    /// @throws BankFault if anything in it is an error
    public static Questions load(Path folder) {
        return load(folder, KnownSound.none());
    }

    /// Loads a bank without examining again the templates that are known to be sound; those of this
    /// bank are known from then on.
    ///
    /// @throws BankFault if anything in it is an error
    public static Questions load(Path folder, KnownSound known) {
        BankCheck check = BankCheck.of(folder, known);
        known.keep();
        BankReport report = BankReport.of(check);
        if (!report.isSound()) {
            throw new BankFault(report.errors());
        }
        return new Questions(check);
    }

    /// Tells what is in a bank and what is wrong with it, after examining everything.
    public static BankReport check(Path folder) {
        return BankReport.of(BankCheck.of(folder, KnownSound.none()));
    }

    /// Puts a question to a student; the same seed gives the same item.
    public Posed pose(Question question, long seed) {
        return switch (question) {
            case FixedQuestion fixed -> fixed.pose(seed);
            case NumericQuestion numeric -> numeric.pose(seed);
        };
    }

    /// The item of [#pose] with options to choose from; empty where it asks for a number and the
    /// values drawn leave fewer than two mistakes that are apart.
    public Optional<Posed> poseAsChoice(Question question, long seed) {
        return switch (question) {
            case FixedQuestion fixed -> Optional.of(fixed.pose(seed));
            case NumericQuestion numeric -> numeric.poseAsChoice(seed);
        };
    }

    /// The bank's texts in other languages.
    public Translations translations() {
        return shipped.translations();
    }

    public Course course() {
        return shipped.course();
    }

    /// All questions, by id.
    public List<Question> all() {
        return all;
    }

    /// @throws Refusal.NotFound if there is none
    public Question question(String id) {
        return findQuestion(id).orElseThrow(() -> missing("question", id));
    }

    public Optional<Question> findQuestion(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /// The questions of a topic that a student may be asked, by id; none for an unknown topic. What
    /// holds in one jurisdiction only would be wrong for a student of another, so unless a school
    /// has chosen, these are the questions that hold everywhere.
    public List<Question> ofTopic(String topic) {
        return byTopic.getOrDefault(topic, List.of());
    }

    /// The questions of a module by id; none for an unknown module.
    public List<Question> ofModule(String module) {
        return byModule.getOrDefault(module, List.of());
    }

    public Optional<Misconception> findMisconception(String id) {
        return Optional.ofNullable(misconceptions.get(id));
    }

    /// All misconceptions, in the order of their file.
    public List<Misconception> misconceptions() {
        return shipped.lists().misconceptions().values();
    }

    /// All sources, in the order of their file.
    public List<Source> sources() {
        return shipped.lists().sources().values();
    }

    /// The names of all illustrations.
    public List<String> illustrations() {
        return shipped.lists().illustrations().ids();
    }

    public Optional<Source> findSource(String id) {
        return shipped.lists().sources().find(id);
    }

    /// @throws Refusal.NotFound if there is none
    public Misconception misconception(String id) {
        return findMisconception(id).orElseThrow(() -> missing("misconception", id));
    }

    /// @throws Refusal.NotFound if there is none
    public Objective objective(String id) {
        return Optional.ofNullable(objectives.get(id)).orElseThrow(() -> missing("objective", id));
    }

    /// The brief of a topic; none for an unknown topic, or where nobody has written one yet.
    public Optional<Brief> findBrief(String topic) {
        return Optional.ofNullable(briefs.get(topic));
    }

    /// The briefs of a module in the order of its topics; none for an unknown module.
    public List<Brief> briefsOf(String module) {
        return shipped.course().findModule(module).stream()
                .flatMap(m -> m.topics().stream())
                .flatMap(topic -> findBrief(topic.id()).stream())
                .toList();
    }

    /// The SHA-256 of everything in the bank; any change of content changes it.
    public String hash() {
        return hash;
    }

    private static Refusal missing(String noun, String id) {
        String shortened = id.substring(0, Math.min(id.length(), 64));
        return new Refusal.NotFound("There is no %s '%s' in the bank.".formatted(noun, shortened));
    }

    private static <T> Map<String, T> index(List<T> values, Function<T, String> id) {
        return values.stream().collect(toMap(id, v -> v));
    }
}
