package org.groundline.bank.file;

import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;

/// Writes texts in the form of the bank's files.
public final class YamlText {
    private static final int WIDTH = 96;

    private YamlText() {}

    /// Writes maps, lists and texts, each on lines of its own, in their order. Every text is read
    /// back as it was, apart from space at its ends.
    public static String of(Object content) {
        DumpSettings settings =
                DumpSettings.builder()
                        .setDefaultFlowStyle(FlowStyle.BLOCK)
                        .setWidth(WIDTH)
                        .setIndent(2)
                        .setIndicatorIndent(2)
                        .setIndentWithIndicator(true)
                        .build();
        return new Dump(settings).dumpToString(content);
    }
}
