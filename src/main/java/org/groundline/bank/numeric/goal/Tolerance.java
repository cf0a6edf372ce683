package org.groundline.bank.numeric.goal;

/// How far from the unrounded value an answer may lie.
///
/// A relative tolerance is never smaller than half the last printed digit, or the printed answer
/// itself would be wrong.
///
/// @param relative a share of the value, or zero
/// @param absolute an amount in the answer's unit, or zero
/// @param halfDigit half the step to which the answer is rounded
public record Tolerance(double relative, double absolute, double halfDigit) {
    /// How far an answer may lie from this value, in its unit.
    public double of(double value) {
        return Math.max(halfDigit, Math.max(absolute, relative * Math.abs(value)));
    }
}
