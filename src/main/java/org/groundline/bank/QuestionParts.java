package org.groundline.bank;

import org.groundline.bank.QuestionText.Answer;
import org.groundline.bank.QuestionText.Place;
import org.groundline.bank.file.BankFile;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Yaml;
import org.groundline.bank.file.Yaml.Fields;
import org.groundline.bank.file.Yaml.Items;
import org.groundline.bank.file.Yaml.Text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// Takes a text apart into the fields of a form, as far as they hold all of it: whatever has no
/// field would be lost when the form is written down again.
final class QuestionParts {
    private static final Set<String> KEYS =
            Set.of(
                    "id",
                    "objective",
                    "level",
                    "safety-critical",
                    "stem",
                    "options",
                    "rationale",
                    "source",
                    "jurisdiction",
                    "illustration");

    private QuestionParts() {}

    static Optional<QuestionText> find(String text) {
        Optional<Fields> file =
                BankFile.parse(text, new Notes(Manuscript.FILE))
                        .filter(root -> holdsOnly(root, Set.of("topic", "questions")))
                        .map(Fields.class::cast);
        return file.flatMap(
                root ->
                        list(root, "questions").stream()
                                .filter(q -> list(root, "questions").size() == 1)
                                .filter(q -> holdsOnly(q, KEYS) && isPlain((Fields) q))
                                .map(q -> parts(word(root, "topic"), (Fields) q))
                                .findFirst());
    }

    private static boolean holdsOnly(Yaml node, Set<String> keys) {
        return node instanceof Fields fields && keys.containsAll(fields.fields().keySet());
    }

    private static boolean isPlain(Fields question) {
        return list(question, "options").stream()
                        .allMatch(o -> holdsOnly(o, Set.of("text", "key", "misconception")))
                && sources(question).stream()
                        .allMatch(s -> isPractice(s) || holdsOnly(s, Set.of("id", "at")));
    }

    private static boolean isPractice(Yaml source) {
        return source instanceof Text(String word, int line)
                && word.equals(QuestionText.COMMON_PRACTICE);
    }

    private static QuestionText parts(String topic, Fields question) {
        List<Answer> options = new ArrayList<>();
        for (Yaml option : list(question, "options")) {
            Fields fields = (Fields) option;
            options.add(
                    new Answer(
                            word(fields, "text"),
                            word(fields, "key").equals("true"),
                            word(fields, "misconception")));
        }
        List<Place> places = new ArrayList<>();
        for (Yaml source : sources(question)) {
            if (source instanceof Fields fields) {
                places.add(new Place(word(fields, "id"), word(fields, "at")));
            }
        }
        return new QuestionText(
                topic,
                word(question, "id"),
                word(question, "objective"),
                word(question, "level"),
                word(question, "safety-critical").equals("true"),
                word(question, "stem"),
                options,
                word(question, "rationale"),
                places,
                sources(question).stream().anyMatch(QuestionParts::isPractice),
                word(question, "jurisdiction"),
                word(question, "illustration"));
    }

    private static List<Yaml> sources(Fields question) {
        Yaml.Field source = question.fields().get("source");
        if (source == null) {
            return List.of();
        }
        return source.value() instanceof Items items ? items.items() : List.of(source.value());
    }

    private static List<Yaml> list(Fields fields, String key) {
        Yaml.Field field = fields.fields().get(key);
        return field != null && field.value() instanceof Items items ? items.items() : List.of();
    }

    private static String word(Fields fields, String key) {
        Yaml.Field field = fields.fields().get(key);
        return field != null && field.value() instanceof Text(String value, int line) ? value : "";
    }
}
