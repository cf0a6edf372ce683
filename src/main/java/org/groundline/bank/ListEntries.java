package org.groundline.bank;

import org.groundline.bank.file.BankFile;
import org.groundline.bank.file.Finding;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Yaml;
import org.groundline.bank.file.YamlText;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/// Holds an entry that was typed into a form against the rules of the list it would stand in.
final class ListEntries {
    private ListEntries() {}

    static List<String> problems(Misconception idea) {
        return problems(
                Map.of("misconceptions", List.of(written(idea))),
                (list, notes) ->
                        MisconceptionsFile.read(list, notes, Lists.empty().misconceptions()));
    }

    static List<String> problems(Source source) {
        return problems(
                Map.of("sources", List.of(written(source))),
                (list, notes) -> SourcesFile.read(list, notes, Lists.empty().sources()));
    }

    private static List<String> problems(Object file, BiConsumer<Yaml, Notes> reader) {
        Notes notes = new Notes("form");
        BankFile.parse(YamlText.of(file), notes).ifPresent(list -> reader.accept(list, notes));
        return notes.findings().stream().map(Finding::message).toList();
    }

    /// The lists as files, by their names; none for an empty list.
    static Map<String, String> files(OwnLists own) {
        Map<String, String> files = new LinkedHashMap<>();
        if (!own.misconceptions().isEmpty()) {
            files.put(
                    MisconceptionsFile.NAME,
                    YamlText.of(
                            Map.of(
                                    "misconceptions",
                                    own.misconceptions().stream()
                                            .map(idea -> written(idea))
                                            .toList())));
        }
        if (!own.sources().isEmpty()) {
            files.put(
                    SourcesFile.NAME,
                    YamlText.of(
                            Map.of(
                                    "sources",
                                    own.sources().stream().map(book -> written(book)).toList())));
        }
        return files;
    }

    /// The keys of an entry of `misconceptions.yaml`.
    private static Map<String, String> written(Misconception idea) {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("id", idea.id());
        keys.put("wrong", idea.wrong());
        keys.put("right", idea.right());
        keys.put("feedback", idea.feedback());
        return keys;
    }

    /// The keys of an entry of `sources.yaml`.
    private static Map<String, String> written(Source source) {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("id", source.id());
        keys.put("title", source.title());
        keys.put("publisher", source.publisher());
        if (!source.year().isEmpty()) {
            keys.put("year", source.year());
        }
        keys.put("read", source.read().word());
        return keys;
    }
}
