package org.groundline.bank.numeric.posed;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A template as posed with options, one of them right.
///
/// @param options in the order in which they are shown
public record PosedChoice(
        Map<String, String> drawn,
        String stem,
        List<PosedOption> options,
        List<String> steps,
        String explanation,
        Optional<PosedPicture> picture)
        implements PosedTemplate {
    public PosedChoice {
        drawn = Collections.unmodifiableMap(new LinkedHashMap<>(drawn));
        options = List.copyOf(options);
        steps = List.copyOf(steps);
    }
}
