package org.groundline.bank.numeric.posed;

/// What leads to a wrong number.
public sealed interface Cause {
    /// A wrong idea that the template names, by the id of its misconception.
    record Idea(String misconception) implements Cause {}

    /// The right value, given in another unit than the one asked for.
    record OtherUnit(String given, String asked) implements Cause {}

    /// The right value, off by ten to this power.
    record PowerOfTen(int exponent) implements Cause {}
}
