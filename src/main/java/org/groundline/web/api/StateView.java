package org.groundline.web.api;

import org.groundline.record.ModuleState;

import java.time.Instant;
import java.util.Optional;

/// Where a student stands in a module.
///
/// @param kind `signed-off` (then at), `ready`, `sitting`, `passed` (then what is missing),
///   `not-passed` (then the marks of the last test), `not-begun`
record StateView(
        String kind,
        Optional<Instant> at,
        Optional<Integer> talksMissing,
        Optional<Integer> demonstrationsMissing,
        Optional<Integer> marksHundredths,
        Optional<Integer> possibleHundredths) {
    static StateView of(ModuleState state) {
        return switch (state) {
            case ModuleState.SignedOff(Instant at) ->
                    new StateView(
                            "signed-off",
                            Optional.of(at),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty());
            case ModuleState.Ready() -> plain("ready");
            case ModuleState.Sitting() -> plain("sitting");
            case ModuleState.Passed(int talks, int demonstrations) ->
                    new StateView(
                            "passed",
                            Optional.empty(),
                            Optional.of(talks),
                            Optional.of(demonstrations),
                            Optional.empty(),
                            Optional.empty());
            case ModuleState.NotPassed(int hundredths, int possible, int passMark) ->
                    new StateView(
                            "not-passed",
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(hundredths),
                            Optional.of(possible));
            case ModuleState.NotBegun() -> plain("not-begun");
        };
    }

    private static StateView plain(String kind) {
        return new StateView(
                kind,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
