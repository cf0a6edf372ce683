package org.groundline.bank.translation;

import org.groundline.bank.file.Nearest;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Reads one file of translations: those that are sound; what is wrong with the others is noted.
public final class TranslationFile {
    private static final String REMEDY = "translate the English of the same name";
    private static final List<Kind> SYLLABUS = List.of(Kind.MODULE, Kind.TOPIC, Kind.OBJECTIVE);

    private final Originals originals;
    private final String english;
    private final Notes notes;
    private final Map<Originals.Name, Integer> lines = new LinkedHashMap<>();

    private TranslationFile(Originals originals, String english, Notes notes) {
        this.originals = originals;
        this.english = english;
        this.notes = notes;
    }

    /// Reads a file.
    ///
    /// @param english the path of the English file of the same name
    public static List<Translation> read(
            Yaml root, Originals originals, String english, Notes notes) {
        return new TranslationFile(originals, english, notes).read(root);
    }

    private List<Translation> read(Yaml root) {
        Section file = Section.of("the file", root, notes);
        return switch (english) {
            case "misconceptions.yaml" -> read(file, List.of(Kind.MISCONCEPTION));
            case "syllabus.yaml" -> read(file, SYLLABUS);
            default -> questions(file);
        };
    }

    private List<Translation> questions(Section file) {
        file.allowOnly("topic", "questions");
        String topic = file.text("topic", "name the topic, such as EQU-1");
        List<Translation> read = entries(file, Kind.QUESTION);
        read.stream()
                .filter(t -> !t.original().topic().equals(topic) && !topic.isEmpty())
                .findFirst()
                .ifPresent(
                        t ->
                                file.note(
                                        Rule.VALUE,
                                        "topic",
                                        "is of topic " + topic + ", its questions are not",
                                        "write topic: " + t.original().topic()));
        return read;
    }

    private List<Translation> read(Section file, List<Kind> kinds) {
        file.allowOnly(kinds.stream().map(Kind::list).toArray(String[]::new));
        List<Translation> read = new ArrayList<>();
        kinds.forEach(kind -> read.addAll(entries(file, kind)));
        return read;
    }

    private List<Translation> entries(Section file, Kind kind) {
        List<Translation> read = new ArrayList<>();
        for (Section section : file.sections(kind.list(), kind.word())) {
            long before = section.errors();
            Optional<Translation> translation = original(section, kind).map(o -> read(section, o));
            if (section.errors() == before) {
                translation.ifPresent(read::add);
            }
        }
        return read;
    }

    /// What the section translates, or empty after noting why it translates nothing.
    private Optional<Original> original(Section section, Kind kind) {
        String id = section.text("id", "name the " + kind.word() + " that it translates");
        Optional<Original> original = originals.find(kind, id);
        if (originals.staysEnglish(kind, id)) {
            section.note(
                    Rule.TRANSLATION_UNKNOWN,
                    "id",
                    "has numbers or a drawing, whose words stay in English",
                    "remove it");
        } else if (original.isEmpty() && !id.isEmpty()) {
            section.note(
                    Rule.TRANSLATION_UNKNOWN,
                    "id",
                    "is of no " + kind.word() + " of the bank",
                    Nearest.remedy(id, originals.ids(kind), "remove it or correct its id"));
        }
        original.ifPresent(o -> checkPlace(section, o));
        return original;
    }

    private void checkPlace(Section section, Original original) {
        if (!original.file().equals(english)) {
            section.note(
                    Rule.FILE_PLACE,
                    "id",
                    "stands in another file than its English",
                    "move it to " + original.file() + " of the same language");
        }
        Integer earlier = lines.putIfAbsent(Originals.Name.of(original), section.line("id"));
        if (earlier != null) {
            section.note(
                    Rule.ID_TWICE,
                    "id",
                    "is translated twice",
                    "line %d has it already, remove one of the two".formatted(earlier));
        }
    }

    private Translation read(Section section, Original original) {
        List<String> known = new ArrayList<>(List.of("id", "follows", "seen"));
        original.parts().stream()
                .map(part -> part.isOption() ? "options" : part.name())
                .distinct()
                .forEach(known::add);
        section.allowOnly(known.toArray(String[]::new));
        return new Translation(
                original,
                hexadecimal(section, "follows", "[0-9a-f]{64}"),
                hexadecimal(section, "seen", "[0-9a-f]{8}(-[0-9a-f]{8})+"),
                texts(section, original),
                section.line("id"));
    }

    private static String hexadecimal(Section section, String key, String form) {
        String text = section.findText(key).orElse("");
        if (!text.isEmpty() && !text.matches(form)) {
            section.note(
                    Rule.VALUE,
                    key,
                    "has a '" + key + "' that is none",
                    "leave both 'follows' and 'seen' out and let `bank sheet` write them");
        }
        return text;
    }

    private static List<String> texts(Section section, Original original) {
        List<Section> options = options(section, original);
        List<String> texts = new ArrayList<>();
        List<String> optionTexts = new ArrayList<>();
        for (Part part : original.parts()) {
            if (!part.isOption()) {
                texts.add(part.wording().read(section, part.name(), REMEDY));
            } else if (optionTexts.size() < options.size()) {
                Section option = options.get(optionTexts.size());
                optionTexts.add(part.wording().read(option, "text", REMEDY));
                texts.add(optionTexts.getLast());
            } else {
                texts.add(""); // noted as missing with the number of options
            }
        }
        checkDifferent(options, optionTexts);
        return texts;
    }

    /// The options as sections; at most as many as the original has.
    private static List<Section> options(Section section, Original original) {
        List<Yaml> written = section.oneOrMore("options");
        if (written.size() != original.options()) {
            section.note(
                    Rule.OPTION_COUNT,
                    "options",
                    "has %d options".formatted(written.size()),
                    "give it %d, in the order of the English".formatted(original.options()));
        }
        List<Section> options = new ArrayList<>();
        for (Yaml text : written.stream().limit(original.options()).toList()) {
            var fields = Map.of("text", new Yaml.Field("text", text.line(), text));
            options.add(
                    section.inner(
                            "option " + (options.size() + 1),
                            new Yaml.Fields(fields, text.line())));
        }
        return options;
    }

    private static void checkDifferent(List<Section> options, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            int equal = texts.indexOf(texts.get(i));
            if (equal < i && !texts.get(i).isEmpty()) {
                options.get(i)
                        .note(
                                Rule.OPTIONS_EQUAL,
                                "text",
                                "says the same as option " + (equal + 1),
                                "let each option say something else");
            }
        }
    }
}
