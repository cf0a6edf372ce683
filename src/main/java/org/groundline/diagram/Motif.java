package org.groundline.diagram;

import java.util.Locale;

/// A kind of drawing.
enum Motif {
    GLIDE_PATH,
    POLAR_TANGENT,
    WIND_TRIANGLE,
    FORCES_IN_GLIDE,
    FORCES_IN_TURN,
    CIRCLE_FROM_ABOVE,
    RESERVE_DESCENT,
    PRESSURE_PROFILE,
    TEMPERATURE_PROFILE,
    DENSITY_PROFILE,
    CLOUD_BASE,
    ALTIMETER_SETTING;

    /// Its name for callers, such as `glide-path`.
    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
