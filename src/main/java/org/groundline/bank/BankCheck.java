package org.groundline.bank;

import org.groundline.bank.QuestionTexts.Written;
import org.groundline.bank.file.BankFile;
import org.groundline.bank.file.Finding;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Yaml;
import org.groundline.bank.translation.Language;
import org.groundline.bank.translation.Originals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;

/// Reads a whole bank: first the lists, then the topic files against them, then what only the whole
/// can show. Topic files are read side by side, which takes most of the time; their findings keep
/// the order of the files.
final class BankCheck {
    private final BankFolder folder;
    private final Lists lists = Lists.empty();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final Map<String, Written> texts = new HashMap<>();
    private final List<Brief> briefs = new ArrayList<>();
    private final Map<String, String> files = new HashMap<>();
    private Originals originals = new Originals(List.of(), Set.of());
    private List<Language> languages = List.of();
    private Course course = new Course("", "", "", List.of());

    private BankCheck(Path folder) {
        this.folder = new BankFolder(folder);
    }

    static BankCheck of(Path folder, KnownSound known) {
        BankCheck check = new BankCheck(folder);
        check.readLists();
        if (check.folder.exists()) {
            boolean allRead = check.readTopics(known);
            check.readBriefs();
            check.findings.addAll(SlipIdeas.missing(check.lists.misconceptions()));
            if (allRead) {
                check.noteUnused();
            }
            check.readLanguages();
        }
        return check;
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    Course course() {
        return course;
    }

    List<Question> questions() {
        return List.copyOf(questions);
    }

    List<Brief> briefs() {
        return List.copyOf(briefs);
    }

    List<Misconception> misconceptions() {
        return lists.misconceptions().values();
    }

    Lists lists() {
        return lists;
    }

    /// The questions as they were written, by id.
    Map<String, Written> texts() {
        return Map.copyOf(texts);
    }

    /// What can be translated.
    Originals originals() {
        return originals;
    }

    List<Language> languages() {
        return languages;
    }

    /// Translations are held against a sound bank only: next to broken English every other one
    /// would seem to be wrong.
    private void readLanguages() {
        if (findings.stream().noneMatch(Finding::isError)) {
            originals = OriginalTexts.of(course, misconceptions(), questions, files);
            TranslationCheck.Checked checked = TranslationCheck.of(folder, originals, questions);
            languages = checked.languages();
            findings.addAll(checked.findings());
        }
    }

    private void readLists() {
        if (!read(SyllabusFile.NAME, (y, n) -> course = SyllabusFile.read(y, n, lists))) {
            lists.topics().close();
            lists.objectives().close();
        }
        if (!read(
                MisconceptionsFile.NAME,
                (y, n) -> MisconceptionsFile.read(y, n, lists.misconceptions()))) {
            lists.misconceptions().close();
        }
        readIllustrations();
        if (!read(SourcesFile.NAME, (y, n) -> SourcesFile.read(y, n, lists.sources()))) {
            lists.sources().close();
        }
    }

    private void readIllustrations() {
        if (!folder.exists()) {
            return;
        }
        for (Path file : folder.illustrations()) {
            Notes notes = new Notes(folder.relative(file));
            IllustrationFile.read(file, notes)
                    .ifPresentOrElse(
                            drawing ->
                                    lists.illustrations()
                                            .add(
                                                    BankFolder.illustrationId(file),
                                                    drawing,
                                                    notes.file()),
                            lists.illustrations()::close);
            findings.addAll(notes.findings());
        }
    }

    /// Whether the list could be read as YAML, whatever else is wrong with it.
    private boolean read(String name, BiConsumer<Yaml, Notes> reader) {
        Notes notes = new Notes(name);
        Path file = folder.list(name);
        Optional<Yaml> root = Optional.empty();
        if (Files.exists(file)) {
            root = BankFile.read(file, notes);
            root.ifPresent(yaml -> reader.accept(yaml, notes));
        } else {
            String remedy = "a bank has " + name + " at its top; check the folder's name";
            notes.add(Rule.FILE_MISSING, 1, "there is no such file", remedy);
        }
        findings.addAll(notes.findings());
        return root.isPresent();
    }

    /// Whether all topic files could be read as YAML; only then can something be called unused.
    private boolean readTopics(KnownSound known) {
        TopicFile reader = new TopicFile(lists, known);
        List<TopicRead> topics =
                folder.topics().parallelStream().map(topic -> read(topic, reader)).toList();
        for (TopicRead topic : topics) {
            topic.drafts().stream()
                    .flatMap(draft -> draft.settle(lists.questions()).stream())
                    .forEach(question -> add(question, topic.notes().file()));
            topic.texts().forEach(texts::putIfAbsent);
            findings.addAll(topic.notes().findings());
        }
        for (Path stranger : folder.strangers()) {
            Notes notes = new Notes(folder.relative(stranger));
            BankFolder.noteStranger(stranger, notes);
            findings.addAll(notes.findings());
        }
        return topics.stream().allMatch(TopicRead::isYaml);
    }

    /// A topic counts as having a brief where there is a file for it, even one with faults.
    private void readBriefs() {
        Set<String> topics = new HashSet<>();
        for (Path file : folder.briefs()) {
            Notes notes = new Notes(folder.relative(file));
            BriefFile.read(file, lists, notes).ifPresent(briefs::add);
            topics.add(BankFolder.briefId(file));
            findings.addAll(notes.findings());
        }
        note(
                lists.topics().without(topics),
                Rule.TOPIC_WITHOUT_BRIEF,
                t -> "topic " + t.topic() + " has no brief",
                "write one in the folder briefs");
    }

    private void add(Question question, String file) {
        questions.add(question);
        files.put(question.id(), file);
    }

    /// What a topic file holds, and the notes made of it so far.
    private record TopicRead(
            Notes notes, boolean isYaml, List<Draft> drafts, Map<String, Written> texts) {}

    private TopicRead read(BankFolder.TopicPath topic, TopicFile reader) {
        Notes notes = new Notes(folder.relative(topic.file()));
        Optional<String> text = BankFile.text(topic.file(), notes);
        Optional<Yaml> root = text.flatMap(t -> BankFile.parse(t, notes));
        List<Draft> drafts =
                root.map(yaml -> reader.read(yaml, notes, topic.module())).orElse(List.of());
        Map<String, Written> texts =
                root.map(yaml -> QuestionTexts.of(text.orElseThrow(), yaml)).orElse(Map.of());
        return new TopicRead(notes, root.isPresent(), drafts, texts);
    }

    private void noteUnused() {
        noteUnused(
                lists.objectives(),
                Rule.OBJECTIVE_WITHOUT_QUESTION,
                o -> "objective " + o.objective().id() + " has no question",
                "write one, or remove the objective");
        noteUnused(
                lists.misconceptions(),
                Rule.MISCONCEPTION_UNUSED,
                m -> "misconception " + m.id() + " is behind no distractor and no mistake",
                "use it or remove it");
        noteUnused(
                lists.illustrations(),
                Rule.ILLUSTRATION_UNUSED,
                i -> "the illustration stands beside no question and in no brief",
                "use it or remove it");
        noteUnused(
                lists.sources(),
                Rule.SOURCE_UNUSED,
                s -> "source " + s.id() + " is cited nowhere",
                "cite it or remove it");
    }

    private <T> void noteUnused(
            Register<T> register, Rule rule, Function<T, String> problem, String remedy) {
        note(register.unused(), rule, problem, remedy);
    }

    private <T> void note(
            List<Register.Entry<T>> entries,
            Rule rule,
            Function<T, String> problem,
            String remedy) {
        for (Register.Entry<T> entry : entries) {
            Notes notes = new Notes(entry.file());
            notes.add(rule, entry.line(), problem.apply(entry.value()), remedy);
            findings.addAll(notes.findings());
        }
    }
}
