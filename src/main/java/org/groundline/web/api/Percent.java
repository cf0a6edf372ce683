package org.groundline.web.api;

import org.groundline.error.Refusal;

import java.math.BigDecimal;
import java.math.RoundingMode;

/// Percentages as decimal texts, cut off after two digits and never rounded up, so that a fail does
/// not read as a pass.
final class Percent {
    private static final int WHOLE = 10_000;

    private Percent() {}

    /// The text of a percentage.
    ///
    /// @param hundredths of a percent
    static String ofHundredths(long hundredths) {
        BigDecimal percent = BigDecimal.valueOf(hundredths, 2).stripTrailingZeros();
        return percent.setScale(Math.max(0, percent.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }

    /// The text of a share of whole cases.
    static String of(int hits, int cases) {
        return ofHundredths((long) WHOLE * hits / cases);
    }

    /// The text of a share.
    ///
    /// @param share from 0 to 1
    static String of(double share) {
        return ofHundredths((long) (share * WHOLE));
    }

    /// Reads a percentage into hundredths of a percent.
    ///
    /// @throws Refusal.Invalid if the text is none
    static int hundredths(String field, String text) {
        if (!text.matches("\\d{1,3}(\\.\\d{1,2})?")) {
            throw new Refusal.Invalid(
                    field, "Write a percentage as decimal text with at most two digits: \"75.5\".");
        }
        return new BigDecimal(text).movePointRight(2).intValueExact();
    }
}
