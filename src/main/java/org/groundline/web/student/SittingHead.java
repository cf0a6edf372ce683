package org.groundline.web.student;

import org.groundline.sitting.OpenSitting;
import org.groundline.sitting.Sitting;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Times;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/// What stands in the head of every page of a test: its name and the clock.
///
/// @param sitting where the sitting's pages begin, `/kestrel/sittings/…`
/// @param clock empty where the test has no end
public record SittingHead(
        Frame frame, SittingWords words, String title, String sitting, Optional<Clock> clock) {
    private static final int SHOWS_SECONDS_BELOW = 120;

    /// The time that is left.
    ///
    /// @param seconds whole seconds until the end, never below zero
    /// @param shown minutes, or minutes and seconds in the last two minutes
    /// @param until when it ends, by the school's clock
    public record Clock(long seconds, String shown, boolean minutes, String until) {
        static Clock of(Instant deadline, Instant now, Times times) {
            long left = Math.max(0, Duration.between(now, deadline).toSeconds());
            boolean minutes = left >= SHOWS_SECONDS_BELOW;
            String shown =
                    minutes ? String.valueOf(left / 60) : "%d:%02d".formatted(left / 60, left % 60);
            return new Clock(left, shown, minutes, times.time(deadline));
        }
    }

    static SittingHead of(Frame frame, SittingWords words, OpenSitting open, Instant now) {
        Sitting.Open sitting = open.sitting();
        Times times = Times.of(frame.school().orElseThrow());
        return new SittingHead(
                frame,
                words,
                open.title(),
                frame.root() + "/sittings/" + sitting.facts().id(),
                sitting.deadline().map(d -> Clock.of(d, now, times)));
    }
}
