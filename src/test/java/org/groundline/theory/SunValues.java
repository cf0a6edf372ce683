package org.groundline.theory;

import static org.groundline.theory.Room.of;

import org.groundline.daylight.Daylight;
import org.groundline.daylight.Place;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;

/// Check values of daylight. Dates are local ones; the zone is the one of the meridian.
final class SunValues {
    static final Room ROOM = Room.named("sun", of("sun_event_utc_minutes", SunValues::minutes));

    private SunValues() {}

    private static double minutes(Given g) {
        var zone = ZoneOffset.ofHours((int) Math.round(g.get("lon") / 15));
        var place = new Place(g.get("lat"), g.get("lon"), zone);
        var date = LocalDate.parse(g.text("date"));
        var event = Daylight.Event.valueOf(g.text("event").toUpperCase(Locale.ROOT));
        var at = Daylight.find(event, place, date).orElseThrow();
        var midnight = date.atStartOfDay(ZoneOffset.UTC).toInstant();
        return Duration.between(midnight, at).toSeconds() / 60.0;
    }
}
