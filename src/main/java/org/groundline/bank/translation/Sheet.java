package org.groundline.bank.translation;

import java.util.ArrayList;
import java.util.List;

/// The bilingual sheet of a language: a row for each text, with its English beside it.
public final class Sheet {
    private Sheet() {}

    /// The sheet of some originals as comma-separated text, in their order.
    public static String of(Language language, List<Original> originals) {
        List<SheetRow> rows = new ArrayList<>();
        originals.forEach(original -> rows.addAll(rows(language, original)));
        return SheetCsv.write(rows);
    }

    private static List<SheetRow> rows(Language language, Original original) {
        var translation = language.find(original.kind(), original.id());
        return original.parts().stream()
                .map(
                        part ->
                                new SheetRow(
                                        language.tag(),
                                        original.kind().word(),
                                        original.id(),
                                        part.sheetName(),
                                        part.text(),
                                        translation.map(t -> t.text(part.name())).orElse(""),
                                        language.state(original).word(),
                                        translation.map(Translation::follows).orElse(""),
                                        original.version()))
                .toList();
    }
}
