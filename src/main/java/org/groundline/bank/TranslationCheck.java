package org.groundline.bank;

import org.groundline.bank.file.BankFile;
import org.groundline.bank.file.Finding;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.translation.Kind;
import org.groundline.bank.translation.Language;
import org.groundline.bank.translation.Original;
import org.groundline.bank.translation.Originals;
import org.groundline.bank.translation.State;
import org.groundline.bank.translation.Translation;
import org.groundline.bank.translation.TranslationFile;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/// Reads the folders of other languages, and tells which translations are behind the English.
final class TranslationCheck {
    private static final String SHEET =
            "export its sheet with `bank sheet`, mend the text, and write 'current' over its state";

    private final BankFolder bank;
    private final Originals originals;
    private final List<FixedQuestion> questions;
    private final List<Finding> findings = new ArrayList<>();

    private TranslationCheck(BankFolder bank, Originals originals, List<Question> questions) {
        this.bank = bank;
        this.originals = originals;
        this.questions =
                questions.stream()
                        .filter(FixedQuestion.class::isInstance)
                        .map(FixedQuestion.class::cast)
                        .toList();
    }

    /// The languages of a bank and what is wrong with them.
    record Checked(List<Language> languages, List<Finding> findings) {}

    static Checked of(BankFolder bank, Originals originals, List<Question> questions) {
        var check = new TranslationCheck(bank, originals, questions);
        List<Language> languages = bank.languages().stream().map(check::read).toList();
        return new Checked(languages, List.copyOf(check.findings));
    }

    private Language read(BankFolder folder) {
        checkTag(folder);
        List<Translation> all = new ArrayList<>();
        Stream.concat(
                        folder.translatedLists().stream(),
                        folder.topics().stream().map(BankFolder.TopicPath::file))
                .forEach(file -> all.addAll(read(file, folder)));
        Language language = new Language(folder.name(), all);
        noteLacking(language);
        noteStrangers(folder);
        return language;
    }

    private void checkTag(BankFolder folder) {
        String tag = folder.name();
        if (tag.equals("en") || !Arrays.asList(Locale.getISOLanguages()).contains(tag)) {
            Notes notes = new Notes(bank.relative(folder.path()));
            notes.add(
                    Rule.LANGUAGE_UNKNOWN,
                    1,
                    tag.equals("en")
                            ? "the bank itself is in English"
                            : "there is no language '%s'".formatted(tag),
                    "name the folder by the two letters of its language, such as de");
            findings.addAll(notes.findings());
        }
    }

    private List<Translation> read(Path file, BankFolder folder) {
        Notes notes = new Notes(bank.relative(file));
        List<Translation> read =
                BankFile.read(file, notes)
                        .map(
                                yaml ->
                                        TranslationFile.read(
                                                yaml, originals, folder.relative(file), notes))
                        .orElse(List.of());
        read.stream()
                .filter(t -> t.state() == State.STALE)
                .forEach(translation -> noteStale(translation, notes));
        findings.addAll(notes.findings());
        return read;
    }

    private static void noteStale(Translation translation, Notes notes) {
        Original original = translation.original();
        String name = original.kind().word() + " " + original.id();
        String problem =
                translation.follows().isEmpty()
                        ? name + " does not say which English it follows"
                        : name + " is stale: " + translation.moved();
        notes.add(Rule.TRANSLATION_STALE, translation.line(), problem, SHEET);
    }

    /// A question that could be put in this language, were it not for an idea behind an option.
    private void noteLacking(Language language) {
        for (FixedQuestion question : questions) {
            Optional<Translation> current = language.findCurrent(Kind.QUESTION, question.id());
            List<String> lacking = TranslatedQuestion.lacking(question, language);
            if (current.isPresent() && !lacking.isEmpty()) {
                Translation translation = current.get();
                Notes notes = new Notes(language.tag() + "/" + translation.original().file());
                notes.add(
                        Rule.TRANSLATION_LACKS_IDEA,
                        translation.line(),
                        "question %s is put in English, as there is no current translation of %s"
                                .formatted(question.id(), String.join(", ", lacking)),
                        "translate it in " + language.tag() + "/" + MisconceptionsFile.NAME);
                findings.addAll(notes.findings());
            }
        }
    }

    private void noteStrangers(BankFolder folder) {
        Stream<Path> sources = Stream.of(folder.list(SourcesFile.NAME)).filter(Files::exists);
        Stream<Path> nested = folder.languages().stream().map(BankFolder::path);
        Stream.of(folder.strangers().stream(), sources, nested)
                .flatMap(strangers -> strangers)
                .forEach(
                        stranger -> {
                            Notes notes = new Notes(bank.relative(stranger));
                            BankFolder.noteStranger(stranger, notes);
                            findings.addAll(notes.findings());
                        });
    }
}
