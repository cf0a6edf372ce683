package org.groundline.web.api;

import org.groundline.formulary.Evaluation;

import java.util.List;
import java.util.Map;

/// A quantity computed.
///
/// @param given what was read for each input
/// @param unit empty for a plain number
record ValueView(
        String name,
        Map<String, String> given,
        double value,
        String unit,
        List<String> warnings,
        String source) {
    static ValueView of(Evaluation evaluation) {
        return new ValueView(
                evaluation.quantity().name(),
                evaluation.given(),
                evaluation.value(),
                evaluation.unit().symbol(),
                evaluation.warnings(),
                evaluation.quantity().source());
    }
}
