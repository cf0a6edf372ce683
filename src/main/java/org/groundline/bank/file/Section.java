package org.groundline.bank.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/// One mapping of a bank file, read key by key. Whatever is missing, misspelt or of the wrong shape
/// is noted with its line, and reading goes on with an empty value, so that an author sees all that
/// is wrong at once; the reader compares [#errors] before and after to know what to keep.
public final class Section {
    private final String name;
    private final Yaml.Fields fields;
    private final Notes notes;

    private Section(String name, Yaml.Fields fields, Notes notes) {
        this.name = name;
        this.fields = fields;
        this.notes = notes;
    }

    /// The mapping that a node should be, or an empty one after noting that it is none.
    ///
    /// @param name what the mapping is, as messages shall call it, such as `option 2`
    public static Section of(String name, Yaml node, Notes notes) {
        if (node instanceof Yaml.Fields fields) {
            return new Section(name, fields, notes);
        }
        notes.add(
                Rule.SHAPE,
                node.line(),
                name + " is not a mapping",
                "write it as lines of the form 'key: value'");
        return absent(name, node.line(), notes);
    }

    /// An empty mapping in place of one whose absence is noted: what it lacks is not noted again.
    private static Section absent(String name, int line, Notes notes) {
        return new Section(name, new Yaml.Fields(Map.of(), line), new Notes(notes.file()));
    }

    /// The same mapping under another name.
    public Section named(String newName) {
        return new Section(newName, fields, notes);
    }

    /// The same mapping, whose findings from now on are told at this place, however late they are
    /// made.
    public Section later() {
        return new Section(name, fields, notes.later());
    }

    public String name() {
        return name;
    }

    public long errors() {
        return notes.errors();
    }

    public boolean has(String key) {
        return fields.fields().containsKey(key);
    }

    public List<String> keys() {
        return List.copyOf(fields.fields().keySet());
    }

    /// The line of the key, or of the whole mapping if it has no such key.
    public int line(String key) {
        return find(key).map(Yaml.Field::line).orElse(fields.line());
    }

    /// The line of the deepest part of a path such as `mistakes[1].formula` that is there.
    public int lineAt(String path) {
        int line = fields.line();
        Optional<Yaml> node = Optional.of(fields);
        for (String part : path.replace("[", ".").replace("]", "").split("\\.")) {
            Optional<Yaml.Field> field = node.flatMap(n -> child(n, part));
            line = field.map(Yaml.Field::line).orElse(line);
            node = field.map(Yaml.Field::value);
        }
        return line;
    }

    private static Optional<Yaml.Field> child(Yaml node, String part) {
        return switch (node) {
            case Yaml.Text text -> Optional.empty();
            case Yaml.Fields all -> Optional.ofNullable(all.fields().get(part));
            case Yaml.Items list ->
                    list.items().stream()
                            .skip(part.matches("\\d{1,4}") ? Integer.parseInt(part) : 9999)
                            .findFirst()
                            .map(item -> new Yaml.Field(part, item.line(), item));
        };
    }

    /// Notes a finding at a path inside this mapping, see [#lineAt].
    public void noteAt(Rule rule, String path, String problem, String remedy) {
        notes.add(rule, lineAt(path), name + " " + problem, remedy);
    }

    public void note(Rule rule, String key, String problem, String remedy) {
        notes.add(rule, line(key), name + " " + problem, remedy);
    }

    /// Notes every key that is not among the known ones.
    public void allowOnly(String... known) {
        List<String> all = Arrays.asList(known);
        for (String key : keys()) {
            if (!all.contains(key)) {
                String otherwise = "the known keys are " + String.join(", ", all);
                String remedy = Nearest.remedy(key, all, otherwise);
                note(Rule.UNKNOWN_KEY, key, "has the unknown key '" + key + "'", remedy);
            }
        }
    }

    /// A text that must be there; empty after noting that it is not.
    public String text(String key, String remedy) {
        if (!has(key)) {
            note(Rule.MISSING, key, "has no '" + key + "'", remedy);
        }
        return findText(key).orElse("");
    }

    /// A text that may be left out.
    public Optional<String> findText(String key) {
        Optional<String> text = find(key).flatMap(f -> text(f.value(), "'" + key + "'", f.line()));
        return text.filter(t -> !t.isEmpty());
    }

    /// `true` or `false`; left out is false.
    public boolean flag(String key) {
        String text = findText(key).orElse("false");
        if (!text.equals("true") && !text.equals("false")) {
            String problem = "has '" + key + ": " + text + "'";
            note(Rule.VALUE, key, problem, "write true, or leave the key out");
        }
        return text.equals("true");
    }

    /// One of a few words that must be there; the first one after noting that it is not.
    public <E> E choice(String key, E[] values, Function<E, String> word) {
        List<String> words = Arrays.stream(values).map(word).toList();
        String remedy = "write one of " + String.join(", ", words);
        String text = text(key, remedy);
        if (!text.isEmpty() && !words.contains(text)) {
            note(Rule.VALUE, key, "has the unknown " + key + " '" + text + "'", remedy);
        }
        return values[Math.max(0, words.indexOf(text))];
    }

    /// A mapping that must be there.
    public Section section(String key, String remedy) {
        Optional<Yaml.Field> field = find(key);
        if (field.isEmpty()) {
            note(Rule.MISSING, key, "has no '" + key + "'", remedy);
            return absent(name, fields.line(), notes);
        }
        return of(name + ", " + key, field.get().value(), notes);
    }

    /// The mappings of a list that may be left out. Messages call each by the given word and its
    /// id, or its number in this section where it has none.
    public List<Section> sections(String key, String word) {
        List<Section> sections = new ArrayList<>();
        for (Yaml item : items(key)) {
            String counted = name + ", " + word + " " + (sections.size() + 1);
            sections.add(of(id(item).map(id -> word + " " + id).orElse(counted), item, notes));
        }
        return sections;
    }

    /// The mappings of a list that must be there and may not be empty, see [#sections].
    public List<Section> someSections(String key, String word) {
        List<Section> sections = sections(key, word);
        if (sections.isEmpty()) {
            note(Rule.MISSING, key, "has no " + key, "list at least one " + word);
        }
        return sections;
    }

    private static Optional<String> id(Yaml item) {
        return child(item, "id")
                .map(Yaml.Field::value)
                .filter(Yaml.Text.class::isInstance)
                .map(text -> ((Yaml.Text) text).value());
    }

    /// The texts of a list that may be left out.
    public List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (Yaml item : items(key)) {
            text(item, "an entry of '" + key + "'", item.line()).ifPresent(texts::add);
        }
        return texts;
    }

    /// The texts under the keys of this mapping.
    public Map<String, String> textsByKey() {
        Map<String, String> texts = new LinkedHashMap<>();
        keys().forEach(key -> texts.put(key, findText(key).orElse("")));
        return texts;
    }

    /// The value under a key where it may be a text, a mapping or a list of them.
    public List<Yaml> oneOrMore(String key) {
        return find(key)
                .map(Yaml.Field::value)
                .map(v -> v instanceof Yaml.Items list ? list.items() : List.of(v))
                .orElse(List.of());
    }

    /// A mapping inside this one, for a value from [#oneOrMore].
    public Section inner(String word, Yaml node) {
        return of(name + ", " + word, node, notes);
    }

    private Collection<Yaml> items(String key) {
        Optional<Yaml.Field> field = find(key);
        if (field.isEmpty()) {
            return List.of();
        }
        if (field.get().value() instanceof Yaml.Items list) {
            return list.items();
        }
        note(Rule.SHAPE, key, "has no list under '" + key + "'", "begin each entry with '- '");
        return List.of();
    }

    private Optional<Yaml.Field> find(String key) {
        return Optional.ofNullable(fields.fields().get(key));
    }

    private Optional<String> text(Yaml node, String what, int line) {
        if (!(node instanceof Yaml.Text(String value, int ignored))) {
            String problem = name + " has a list or mapping where " + what + " is a text";
            notes.add(Rule.SHAPE, line, problem, "write one text there");
            return Optional.empty();
        }
        if (value.isEmpty()) {
            notes.add(
                    Rule.MISSING,
                    line,
                    name + " has nothing in " + what,
                    "fill it or leave it out");
        }
        return Optional.of(value);
    }
}
