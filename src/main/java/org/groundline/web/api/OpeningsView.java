package org.groundline.web.api;

import static java.util.stream.Collectors.toMap;

import org.groundline.sitting.Blueprint;
import org.groundline.sitting.Opening;
import org.groundline.sitting.Sitting;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Opened tests, the newest first.
record OpeningsView(List<OpeningView> openings) {
    /// @param openNow whether it may be begun at this moment
    /// @param sitting the sitting that the one who asks has open on it
    record OpeningView(
            UUID opening,
            String name,
            String stakes,
            String module,
            UUID intake,
            int items,
            int minutes,
            Instant opensAt,
            Instant closesAt,
            String place,
            boolean openNow,
            Optional<UUID> sitting) {}

    static OpeningsView all(List<Opening> openings, Instant now) {
        return new OpeningsView(openings.stream().map(opening -> one(opening, now)).toList());
    }

    static OpeningsView mine(List<Opening> openings, List<Sitting.Open> begun, Instant now) {
        Map<UUID, UUID> sittings =
                begun.stream()
                        .map(Sitting.Open::facts)
                        .filter(facts -> facts.opening().isPresent())
                        .collect(toMap(f -> f.opening().orElseThrow(), Sitting.Facts::id));
        return new OpeningsView(
                openings.stream()
                        .map(o -> of(o, now, Optional.ofNullable(sittings.get(o.id()))))
                        .toList());
    }

    static OpeningView one(Opening opening, Instant now) {
        return of(opening, now, Optional.empty());
    }

    private static OpeningView of(Opening opening, Instant now, Optional<UUID> sitting) {
        Blueprint blueprint = opening.blueprint();
        return new OpeningView(
                opening.id(),
                blueprint.name(),
                blueprint.stakes().word(),
                blueprint.module(),
                opening.intake(),
                blueprint.items(),
                blueprint.minutes(),
                opening.opensAt(),
                opening.closesAt(),
                opening.place(),
                opening.isOpenAt(now),
                sitting);
    }
}
