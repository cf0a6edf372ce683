package org.groundline.daylight;

import java.time.ZoneId;

/// Where the sun is looked at.
///
/// @param latitudeDeg −90 to 90, positive in the north
/// @param longitudeDeg −180 to 180, positive in the east
/// @param zone whose days are meant
public record Place(double latitudeDeg, double longitudeDeg, ZoneId zone) {
    public Place {
        requireWithin("latitude (°)", latitudeDeg, 90);
        requireWithin("longitude (°)", longitudeDeg, 180);
    }

    private static void requireWithin(String quantity, double value, double most) {
        if (!(Math.abs(value) <= most)) {
            throw new IllegalArgumentException(
                    "%s must be from %s to %s, but is %s".formatted(quantity, -most, most, value));
        }
    }
}
