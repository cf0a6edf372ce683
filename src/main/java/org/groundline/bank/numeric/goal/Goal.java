package org.groundline.bank.numeric.goal;

import org.groundline.measure.Unit;

import java.math.BigDecimal;

/// What the value of a template's formula is for; all values are in `unit`.
public sealed interface Goal permits Key, Decision {
    /// Its place in the template.
    String at();

    Unit unit();

    Tolerance tolerance();

    /// The plausible values.
    Range range();

    /// Whether a case with this value can be posed: it is not too close to call.
    boolean isClear(double value);

    BigDecimal printed(double value);

    /// The last line of a worked solution.
    String line(double value);
}
