package org.groundline.bank.translation;

import java.util.List;

/// One row of a bilingual sheet.
///
/// @param kind as [Kind#word] says it
/// @param state as [State#word] says it; a translator writes `current` over `stale` to confirm
/// @param follows the version that the translation follows; empty where none is known
/// @param version the version of the English when the sheet was made
record SheetRow(
        String language,
        String kind,
        String id,
        String part,
        String source,
        String translation,
        String state,
        String follows,
        String version) {
    static final List<String> HEADER =
            List.of(
                    "language",
                    "kind",
                    "id",
                    "part",
                    "source",
                    "translation",
                    "state",
                    "follows",
                    "version");

    static SheetRow of(List<String> cells) {
        return new SheetRow(
                cells.get(0),
                cells.get(1),
                cells.get(2),
                cells.get(3),
                cells.get(4),
                cells.get(5),
                cells.get(6),
                cells.get(7),
                cells.get(8));
    }

    List<String> cells() {
        return List.of(language, kind, id, part, source, translation, state, follows, version);
    }
}
