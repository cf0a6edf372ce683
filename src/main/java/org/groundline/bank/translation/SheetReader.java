package org.groundline.bank.translation;

import org.groundline.bank.file.Characters;
import org.groundline.bank.file.Nearest;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/// Reads a filled sheet back, held against the English as it is now. Whatever is wrong is noted
/// with the number of its row as the line.
final class SheetReader {
    private static final String NEW_SHEET =
            "export a new sheet and carry your text over, looking at what changed";

    private final Originals originals;
    private final Language before;
    private final Notes notes;

    /// @param before the translations as they are in the bank
    SheetReader(Originals originals, Language before, Notes notes) {
        this.originals = originals;
        this.before = before;
        this.notes = notes;
    }

    /// The rows of one original.
    ///
    /// @param rows by the name of their part
    private record Group(Original original, int first, Map<String, SheetCsv.Numbered> rows) {
        boolean has(Part part) {
            return rows.containsKey(part.sheetName());
        }

        SheetCsv.Numbered row(Part part) {
            SheetCsv.Numbered row = rows.get(part.sheetName());
            if (row == null) {
                throw new IllegalStateException("unchecked part " + part.name());
            }
            return row;
        }

        List<String> cells(Function<SheetRow, String> column) {
            return original.parts().stream().map(part -> column.apply(row(part).row())).toList();
        }
    }

    /// What the sheet makes of each original that it names; empty where it has no translation.
    Map<Original, Optional<Translation>> read(List<SheetCsv.Numbered> rows) {
        Map<Original, Optional<Translation>> taken = new LinkedHashMap<>();
        for (Group group : groups(rows)) {
            long errors = notes.errors();
            checkWhole(group);
            if (notes.errors() == errors) {
                taken.put(group.original(), translation(group));
            }
        }
        return taken;
    }

    private List<Group> groups(List<SheetCsv.Numbered> rows) {
        Map<Original, Group> groups = new LinkedHashMap<>();
        for (SheetCsv.Numbered row : rows) {
            original(row).ifPresent(original -> add(row, original, groups));
        }
        return List.copyOf(groups.values());
    }

    private void add(SheetCsv.Numbered row, Original original, Map<Original, Group> groups) {
        Group group =
                groups.computeIfAbsent(
                        original, o -> new Group(o, row.number(), new LinkedHashMap<>()));
        if (group.rows().putIfAbsent(row.row().part(), row) != null) {
            note(Rule.ID_TWICE, row, "has a part that an earlier row has", "remove one of them");
        }
    }

    private Optional<Original> original(SheetCsv.Numbered row) {
        Optional<Kind> kind =
                Arrays.stream(Kind.values())
                        .filter(k -> k.word().equals(row.row().kind()))
                        .findFirst();
        Optional<Original> original = kind.flatMap(k -> originals.find(k, row.row().id()));
        if (!row.row().language().equals(before.tag())) {
            note(
                    Rule.VALUE,
                    row,
                    "is of the language '%s', row 2 of '%s'"
                            .formatted(row.row().language(), before.tag()),
                    "take each language's sheet by itself");
        } else if (original.isEmpty()) {
            List<String> ids = kind.map(originals::ids).orElse(List.of());
            String remedy = Nearest.remedy(row.row().id(), ids, "remove the row");
            note(Rule.TRANSLATION_UNKNOWN, row, "is of nothing in the bank", remedy);
        }
        return original;
    }

    private void checkWhole(Group group) {
        for (Part part : group.original().parts()) {
            if (group.has(part)) {
                checkEnglish(group.row(part), part, group.original());
            } else {
                notes.add(
                        Rule.MISSING,
                        group.first(),
                        "row %d: %s has no row for its %s"
                                .formatted(
                                        group.first(), group.original().name(), part.sheetName()),
                        "leave every row of a sheet in it");
            }
        }
        List<String> known = group.original().parts().stream().map(Part::sheetName).toList();
        group.rows().values().stream()
                .filter(row -> !known.contains(row.row().part()))
                .forEach(
                        row ->
                                note(
                                        Rule.VALUE,
                                        row,
                                        "has an unknown part",
                                        "the parts are " + String.join(", ", known)));
    }

    private void checkEnglish(SheetCsv.Numbered row, Part part, Original original) {
        if (!row.row().version().equals(original.version())) {
            note(Rule.TRANSLATION_OUTDATED, row, "is of another version of the English", NEW_SHEET);
        } else if (!row.row().source().equals(part.text())) {
            note(
                    Rule.TRANSLATION_OUTDATED,
                    row,
                    "has another English text than the bank",
                    "change the English in the bank, not in a sheet; " + NEW_SHEET);
        }
        List<String> states = Arrays.stream(State.values()).map(State::word).toList();
        if (!states.contains(row.row().state())) {
            note(
                    Rule.VALUE,
                    row,
                    "has the unknown state '" + row.row().state() + "'",
                    "write one of " + String.join(", ", states));
        }
        if (!row.row().follows().matches("([0-9a-f]{64})?")) {
            note(Rule.VALUE, row, "has a 'follows' that is none", "leave that column as it was");
        }
    }

    private Optional<Translation> translation(Group group) {
        List<String> texts = group.cells(SheetRow::translation);
        if (texts.stream().allMatch(String::isEmpty)) {
            return Optional.empty();
        }
        long errors = notes.errors();
        group.original().parts().forEach(part -> checkText(group.row(part), part));
        return notes.errors() > errors ? Optional.empty() : Optional.of(confirmed(group, texts));
    }

    /// It follows the English as it is now, unless a row still says that it is stale.
    private Translation confirmed(Group group, List<String> texts) {
        Original original = group.original();
        if (!group.cells(SheetRow::state).contains(State.STALE.word())) {
            return Translation.current(original, texts, group.first());
        }
        String follows = group.cells(SheetRow::follows).getFirst();
        String seen =
                before.find(original.kind(), original.id())
                        .filter(t -> t.follows().equals(follows))
                        .map(Translation::seen)
                        .orElse("");
        return new Translation(original, follows, seen, texts, group.first());
    }

    /// Holds a text against the limits that hold for it in a file.
    private void checkText(SheetCsv.Numbered row, Part part) {
        String text = row.row().translation();
        Characters.findForbidden(text)
                .ifPresent(
                        bad ->
                                note(
                                        Rule.CHARACTER,
                                        row,
                                        "contains the invisible character " + bad,
                                        "remove it and type the text again"));
        String key = part.isOption() ? "text" : part.name();
        var field = new Yaml.Field(key, row.number(), new Yaml.Text(text, row.number()));
        Map<String, Yaml.Field> fields = text.isEmpty() ? Map.of() : Map.of(key, field);
        Section section = Section.of(name(row), new Yaml.Fields(fields, row.number()), notes);
        part.wording()
                .read(section, key, "fill it in, or empty all rows of this " + row.row().kind());
    }

    private void note(Rule rule, SheetCsv.Numbered row, String problem, String remedy) {
        notes.add(rule, row.number(), name(row) + " " + problem, remedy);
    }

    private static String name(SheetCsv.Numbered row) {
        return "row %d: %s %s, %s,"
                .formatted(row.number(), row.row().kind(), row.row().id(), row.row().part());
    }

    /// The translations of a language after a sheet, in the order of the English.
    List<Translation> merged(Map<Original, Optional<Translation>> taken) {
        List<Translation> merged = new ArrayList<>();
        for (Original original : originals.all()) {
            Optional<Translation> old = before.find(original.kind(), original.id());
            taken.getOrDefault(original, old).ifPresent(merged::add);
        }
        return merged;
    }
}
