package org.groundline.bank;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import org.groundline.error.Refusal;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/// The loaded question bank: sound, immutable, and answering every look-up from memory.
public final class Questions {
    private final Course course;
    private final List<Question> all;
    private final Map<String, Question> byId;
    private final Map<String, List<Question>> byTopic;
    private final Map<String, List<Question>> byModule;
    private final Map<String, Misconception> misconceptions;
    private final Map<String, Objective> objectives;
    private final Translations translations;
    private final String hash;

    private Questions(BankCheck check) {
        course = check.course();
        all = check.questions().stream().sorted(Comparator.comparing(Question::id)).toList();
        byId = index(all, Question::id);
        byTopic =
                all.stream().filter(Question::holdsEverywhere).collect(groupingBy(Question::topic));
        byModule = all.stream().collect(groupingBy(Question::module));
        misconceptions = index(check.misconceptions(), Misconception::id);
        objectives =
                index(
                        course.modules().stream()
                                .flatMap(m -> m.topics().stream())
                                .flatMap(t -> t.objectives().stream())
                                .toList(),
                        Objective::id);
        translations = new Translations(check);
        hash = BankHash.of(course, all, check.misconceptions(), check.sources(), translations);
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
        return translations;
    }

    public Course course() {
        return course;
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

    /// The questions of a topic that hold in every country, by id; none for an unknown topic. What
    /// holds in one jurisdiction only would be wrong for a student of another.
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

    /// @throws Refusal.NotFound if there is none
    public Misconception misconception(String id) {
        return findMisconception(id).orElseThrow(() -> missing("misconception", id));
    }

    /// @throws Refusal.NotFound if there is none
    public Objective objective(String id) {
        return Optional.ofNullable(objectives.get(id)).orElseThrow(() -> missing("objective", id));
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
