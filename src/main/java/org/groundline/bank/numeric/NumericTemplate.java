package org.groundline.bank.numeric;

import java.util.Map;

/// A checked template. It poses a question for every seed, the same one for the same seed.
public final class NumericTemplate {
    private NumericTemplate() {}

    public static Checked check(TemplateSource source) {
        throw new UnsupportedOperationException("not built yet: " + source.id());
    }

    public PosedNumber pose(long seed) {
        throw new UnsupportedOperationException("not built yet: " + seed);
    }

    /// Computes the answer for given values, each with its unit or in the unit of its draw.
    ///
    /// @throws org.groundline.error.Refusal.Invalid if a value is missing, unknown or unreadable,
    ///   or if there is no answer for these values
    public Evaluation evaluate(Map<String, String> given) {
        throw new UnsupportedOperationException("not built yet: " + given);
    }
}
