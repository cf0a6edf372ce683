package org.groundline.bank.translation;

import static java.util.stream.Collectors.groupingBy;

import org.groundline.bank.file.Notes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/// What a filled sheet changes in the folder of its language.
///
/// @param files the new text of each file that changes, by its path from the bank's folder; empty
///   for one in which nothing is left
/// @param states how many of the sheet's originals are then current, stale and missing
public record TakenSheet(
        String language, Map<String, Optional<String>> files, Map<State, Integer> states) {
    public TakenSheet {
        files = Map.copyOf(files);
        states = Map.copyOf(states);
    }

    /// Reads a sheet; what is wrong with it is noted, and then nothing may be written.
    ///
    /// @param languages the translations in the bank by a language's tag; none yet for a new one
    public static TakenSheet read(
            String csv, Originals originals, Function<String, Language> languages, Notes notes) {
        List<SheetCsv.Numbered> rows = SheetCsv.read(csv, notes);
        if (rows.isEmpty()) {
            return new TakenSheet("", Map.of(), Map.of());
        }
        Language before = languages.apply(rows.getFirst().row().language());
        var reader = new SheetReader(originals, before, notes);
        Map<Original, Optional<Translation>> taken = reader.read(rows);
        var after = new Language(before.tag(), reader.merged(taken));
        return new TakenSheet(before.tag(), changed(before, after, originals), count(taken));
    }

    private static Map<State, Integer> count(Map<Original, Optional<Translation>> taken) {
        Map<State, Integer> states = new LinkedHashMap<>();
        taken.values()
                .forEach(
                        t ->
                                states.merge(
                                        t.map(Translation::state).orElse(State.MISSING),
                                        1,
                                        Integer::sum));
        return states;
    }

    private static Map<String, Optional<String>> changed(
            Language before, Language after, Originals originals) {
        Map<String, List<Translation>> old = byFile(before);
        Map<String, List<Translation>> young = byFile(after);
        Map<String, Optional<String>> changed = new TreeMap<>();
        for (String file : originals.byFile().keySet()) {
            List<Translation> were = old.getOrDefault(file, List.of());
            List<Translation> are = young.getOrDefault(file, List.of());
            if (!sayTheSame(were, are)) {
                changed.put(
                        before.tag() + "/" + file,
                        are.isEmpty()
                                ? Optional.empty()
                                : Optional.of(TranslationWriter.write(file, are)));
            }
        }
        return changed;
    }

    private static Map<String, List<Translation>> byFile(Language language) {
        return language.all().stream().collect(groupingBy(t -> t.original().file()));
    }

    /// Whether they say the same of the same, in whatever order.
    private static boolean sayTheSame(List<Translation> were, List<Translation> are) {
        return were.size() == are.size()
                && are.stream().allMatch(now -> were.stream().anyMatch(now::saysTheSameAs));
    }
}
