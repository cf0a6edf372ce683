package org.groundline.web.student;

import org.groundline.school.PolicyRules;

import java.math.BigDecimal;
import java.math.RoundingMode;

/// Marks as people read them. A share is cut off, never rounded up: a fail never reads as the pass
/// mark.
///
/// @param hundredths marks gained, in hundredths of a mark
/// @param possible marks to be had, in hundredths, above zero
record Marks(int hundredths, int possible) {
    private static final String PERCENT = "\u202F%";

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

    /// Such as "73 %"; with two more digits where the pass mark has them.
    String share(PolicyRules rules) {
        int digits = rules.passMark() % 100 == 0 ? 0 : 2;
        return BigDecimal.valueOf(100L * hundredths)
                        .divide(BigDecimal.valueOf(possible), digits, RoundingMode.FLOOR)
                        .toPlainString()
                + PERCENT;
    }

    /// The pass mark, such as "75 %".
    static String passMark(PolicyRules rules) {
        return plain(rules.passMark()) + PERCENT;
    }

    private static String plain(int hundredths) {
        return BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString();
    }
}
