package org.groundline.diagram;

import java.util.Locale;

/// A thing that a drawing may show, label or ask for.
enum Term {
    AIR_SINK,
    AIRSPEED,
    ALTITUDE,
    A,
    B,
    BANK,
    C,
    CIRCLE_TIME,
    CLOUD_BASE,
    CORRECT_SETTING,
    COURSE,
    DENSITY,
    DEW_POINT,
    DISTANCE,
    DRAG,
    DRIFT,
    EQUAL_JUMP_HEIGHT,
    GLIDE_ANGLE,
    GLIDE_RATIO,
    GROUND_SPEED,
    HEADING,
    HEADWIND,
    HEIGHT,
    HORIZONTAL_LIFT,
    INDICATED_ALTITUDE,
    LIFT,
    LOAD_FACTOR,
    MASS,
    MAXIMUM_SPEED,
    OVER_READ,
    PRESSURE,
    RADIUS,
    RESERVE,
    SETTING,
    SINK_RATE,
    SPEED_TO_FLY,
    SPREAD,
    STILL_AIR_DISTANCE,
    TEMPERATURE,
    TRUE_ALTITUDE,
    VERTICAL_LIFT,
    WEIGHT,
    WIND_CORRECTION_ANGLE,
    WIND_FROM,
    WIND_SPEED;

    /// Its name for callers, such as `ground-speed`.
    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
