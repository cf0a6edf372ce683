package org.groundline.web.api;

import org.groundline.sitting.Sitting;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// A sitting in short.
///
/// @param state `open`, `handed-in` or `annulled`
/// @param deadlineAt when the clock hands it in; only while it is open
/// @param handedInBy `student`, `clock` or `staff`
record BegunView(
        UUID sitting,
        String module,
        String state,
        Instant startedAt,
        Optional<Instant> deadlineAt,
        Optional<Instant> handedInAt,
        Optional<String> handedInBy) {
    static BegunView of(Sitting sitting) {
        return switch (sitting) {
            case Sitting.Open open ->
                    of(open, "open", open.deadline(), Optional.empty(), Optional.empty());
            case Sitting.HandedIn in ->
                    of(
                            in,
                            "handed-in",
                            Optional.empty(),
                            Optional.of(in.at()),
                            Optional.of(in.by()));
            case Sitting.Annulled annulled ->
                    of(annulled, "annulled", Optional.empty(), Optional.empty(), Optional.empty());
        };
    }

    private static BegunView of(
            Sitting sitting,
            String state,
            Optional<Instant> deadline,
            Optional<Instant> at,
            Optional<String> by) {
        Sitting.Facts facts = sitting.facts();
        return new BegunView(facts.id(), facts.scope(), state, facts.startedAt(), deadline, at, by);
    }
}
