package org.groundline.web.student;

import org.groundline.school.PolicyRules;
import org.groundline.web.request.Percent;

import java.math.BigDecimal;

/// Marks as people read them.
///
/// @param hundredths marks gained, in hundredths of a mark
/// @param possible marks to be had, in hundredths, above zero
record Marks(int hundredths, int possible) {
    Marks {
        if (hundredths < 0 || possible <= 0) {
            throw new IllegalArgumentException(
                    "hundredths of marks %d of %d; wanted from 0 of 1"
                            .formatted(hundredths, possible));
        }
    }

    /// Such as "24".
    String gained() {
        return plain(hundredths);
    }

    /// Such as "30".
    String all() {
        return plain(possible);
    }

    /// Such as "73 %", with the decimals of the pass mark.
    String share(PolicyRules rules) {
        return Percent.gained(hundredths, possible, rules.passMark());
    }

    private static String plain(int hundredths) {
        return BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString();
    }
}
