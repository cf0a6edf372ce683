package org.groundline.bank;

import java.util.List;

/// What every question says about itself, apart from its texts.
public record Heading(
        String id,
        String objective,
        String topic,
        String module,
        Level level,
        boolean safetyCritical,
        List<Citation> sources) {
    public Heading {
        sources = List.copyOf(sources);
    }

    List<String> sourceTexts() {
        return sources.stream().map(Citation::text).toList();
    }
}
