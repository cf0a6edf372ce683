package org.groundline.web.staff;

import org.groundline.record.ModuleState;
import org.groundline.web.request.Percent;
import org.groundline.web.staff.words.SharedWords;

import java.time.Instant;
import java.util.function.Function;

/// A module's state as a word and the class that carries its sign.
///
/// @param style class of the style sheet
/// @param lead the words that the sign stands for, too, so that a narrow table may hide them
/// @param rest what only words tell, such as the day; empty where there is nothing more
public record StateWords(String style, String lead, String rest) {
    /// Puts a state into words.
    ///
    /// @param day how a day is told here
    static StateWords of(ModuleState state, SharedWords words, Function<Instant, String> day) {
        return switch (state) {
            case ModuleState.SignedOff signed ->
                    new StateWords("signed", words.signed(), day.apply(signed.at()));
            case ModuleState.Ready ready -> new StateWords("ready", "", words.ready());
            case ModuleState.Sitting sitting -> new StateWords("begun", "", words.sittingNow());
            case ModuleState.Passed passed ->
                    new StateWords(
                            "talk",
                            words.passed(),
                            words.open(passed.talks(), passed.demonstrations()));
            case ModuleState.NotPassed not ->
                    new StateWords(
                            "missing",
                            words.notPassed(),
                            Percent.gained(not.hundredths(), not.possible(), not.passMark()));
            case ModuleState.NotBegun not -> new StateWords("untouched", words.notBegun(), "");
        };
    }

    /// All of it.
    public String text() {
        return (lead + " " + rest).strip();
    }
}
