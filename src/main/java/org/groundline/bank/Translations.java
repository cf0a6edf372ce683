package org.groundline.bank;

import org.groundline.bank.file.Notes;
import org.groundline.bank.translation.Kind;
import org.groundline.bank.translation.Language;
import org.groundline.bank.translation.Original;
import org.groundline.bank.translation.Originals;
import org.groundline.bank.translation.Sheet;
import org.groundline.bank.translation.State;
import org.groundline.bank.translation.TakenSheet;
import org.groundline.error.Refusal;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// A loaded bank's texts in other languages, and the sheets on which they are written.
public final class Translations {
    private static final String ENGLISH = "en";

    private final Course course;
    private final Originals originals;
    private final List<FixedQuestion> questions;
    private final Map<String, Language> languages = new TreeMap<>();
    private final Map<String, Map<String, TranslatedQuestion>> current = new TreeMap<>();

    Translations(BankCheck check) {
        course = check.course();
        originals = check.originals();
        questions =
                check.questions().stream()
                        .filter(FixedQuestion.class::isInstance)
                        .map(FixedQuestion.class::cast)
                        .toList();
        for (Language language : check.languages()) {
            languages.put(language.tag(), language);
            current.put(language.tag(), currentIn(language));
        }
    }

    private Map<String, TranslatedQuestion> currentIn(Language language) {
        Map<String, TranslatedQuestion> found = new HashMap<>();
        for (FixedQuestion question : questions) {
            TranslatedQuestion.find(question, language)
                    .ifPresent(translated -> found.put(question.id(), translated));
        }
        return Map.copyOf(found);
    }

    /// How one translation stands to the English.
    public record Standing(Kind kind, String id, State state) {}

    /// The languages in which questions can be put, English first, then by their tags.
    public List<String> languages() {
        return Stream.concat(
                        Stream.of(ENGLISH),
                        current.entrySet().stream()
                                .filter(language -> !language.getValue().isEmpty())
                                .map(Map.Entry::getKey))
                .toList();
    }

    /// The question in a language, or empty where it is put in English: it is not translated, or
    /// its translation is stale.
    public Optional<TranslatedQuestion> find(String language, Question question) {
        return Optional.ofNullable(current.getOrDefault(language, Map.of()).get(question.id()))
                .filter(translated -> translated.follows(question));
    }

    /// The title of a module or topic, or the text of an objective, in a language; empty where it
    /// has none that follows the English.
    public Optional<String> findText(String language, Kind kind, String id) {
        return Optional.ofNullable(languages.get(language))
                .flatMap(l -> l.findCurrent(kind, id))
                .map(translation -> translation.texts().getFirst());
    }

    /// How each translation of a module stands: its syllabus, the misconceptions of its questions,
    /// its questions. Those that stay in English are left out.
    ///
    /// @param language any language, also one without a translation yet
    /// @throws Refusal.NotFound if there is no such module
    public List<Standing> standings(String language, String module) {
        Language texts = language(language);
        return originalsOf(module).stream()
                .map(o -> new Standing(o.kind(), o.id(), texts.state(o)))
                .toList();
    }

    /// The bilingual sheet of a module, as comma-separated text.
    ///
    /// @param language any language, also one without a translation yet
    /// @throws Refusal.NotFound if there is no such module or language
    public String sheet(String language, String module) {
        return Sheet.of(language(language), originalsOf(module));
    }

    /// Reads a filled sheet and tells what it changes in the bank's folder.
    ///
    /// @param name what findings call the sheet
    /// @throws BankFault if anything in it is wrong, with the number of its row as the line
    public TakenSheet take(String csv, String name) {
        Notes notes = new Notes(name);
        TakenSheet taken = TakenSheet.read(csv, originals, this::language, notes);
        if (notes.errors() > 0) {
            throw new BankFault(notes.findings());
        }
        return taken;
    }

    private Language language(String tag) {
        if (tag.equals(ENGLISH) || !Arrays.asList(Locale.getISOLanguages()).contains(tag)) {
            String shortened = tag.substring(0, Math.min(tag.length(), 64));
            throw new Refusal.NotFound(
                    "There is no other language '%s'; give the two letters of one, such as de."
                            .formatted(shortened));
        }
        return Optional.ofNullable(languages.get(tag)).orElse(new Language(tag, List.of()));
    }

    private List<Original> originalsOf(String module) {
        if (course.findModule(module).isEmpty()) {
            String shortened = module.substring(0, Math.min(module.length(), 64));
            throw new Refusal.NotFound("The course has no module '%s'.".formatted(shortened));
        }
        Set<String> ideas =
                questions.stream()
                        .filter(q -> q.module().equals(module) && OriginalTexts.isTranslatable(q))
                        .flatMap(q -> q.options().stream())
                        .flatMap(option -> option.misconception().stream())
                        .map(Misconception::id)
                        .collect(Collectors.toSet());
        return originals.all().stream().filter(o -> isOf(module, o, ideas)).toList();
    }

    private static boolean isOf(String module, Original original, Set<String> ideas) {
        return switch (original.kind()) {
            case MODULE -> original.id().equals(module);
            case TOPIC, OBJECTIVE -> original.id().startsWith(module + "-");
            case MISCONCEPTION -> ideas.contains(original.id());
            case QUESTION -> original.topic().startsWith(module + "-");
        };
    }

    /// The versions of all that can be shown, for the hash of the bank.
    Map<String, Object> content() {
        Map<String, Object> content = new TreeMap<>();
        languages.forEach((tag, language) -> content.put(tag, content(language)));
        return content;
    }

    private static Map<String, Object> content(Language language) {
        Map<String, Object> content = new TreeMap<>();
        language.all()
                .forEach(
                        t ->
                                content.put(
                                        t.original().kind().word() + " " + t.original().id(),
                                        Map.of("follows", t.follows(), "texts", t.texts())));
        return content;
    }
}
