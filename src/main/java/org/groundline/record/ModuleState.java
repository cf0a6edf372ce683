package org.groundline.record;

import java.time.Instant;

/// Where a student stands in a module; the first of these, from the top, that holds.
public sealed interface ModuleState {
    /// An instructor has signed.
    record SignedOff(Instant at) implements ModuleState {}

    /// Everything is met; an instructor may sign.
    record Ready() implements ModuleState {}

    /// A test of the module is being sat.
    record Sitting() implements ModuleState {}

    /// The test is passed; something else is still missing.
    ///
    /// @param talks safety-critical answers to be talked through
    /// @param demonstrations things to be shown
    record Passed(int talks, int demonstrations) implements ModuleState {}

    /// The last test was not passed.
    ///
    /// @param hundredths marks gained, in hundredths of a mark
    /// @param possible marks to be had, in hundredths
    /// @param passMark of the policy it was taken under, in hundredths of a percent
    record NotPassed(int hundredths, int possible, int passMark) implements ModuleState {}

    /// No test was sat.
    record NotBegun() implements ModuleState {}
}
