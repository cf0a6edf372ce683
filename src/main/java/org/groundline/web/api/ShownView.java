package org.groundline.web.api;

import org.groundline.database.SubjectId;
import org.groundline.record.ShownDemonstration;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;

/// A demonstration of a module, and whether it was observed.
record ShownView(
        String demonstration,
        String title,
        Optional<Instant> observedAt,
        Optional<NamedStaffView> observedBy) {
    static ShownView of(ShownDemonstration shown, Function<SubjectId, NamedStaffView> staff) {
        return new ShownView(
                shown.demonstration().id(),
                shown.demonstration().title(),
                shown.observed().map(ShownDemonstration.Observation::at),
                shown.observed().map(o -> staff.apply(o.observer())));
    }
}
