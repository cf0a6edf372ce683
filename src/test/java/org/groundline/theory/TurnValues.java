package org.groundline.theory;

import static org.groundline.theory.Room.of;

import org.groundline.measure.Units;

/// Check values of the turn.
final class TurnValues {
    static final Room ROOM =
            Room.named(
                    "turn",
                    of("load_factor", g -> Turn.loadFactor(g.bank())),
                    of(
                            "stall_speed_increase_pct",
                            g -> 100 * Turn.stallSpeedAtBank(1, g.bank()) - 100),
                    of("stall_speed_factor_from_n", g -> Turn.stallSpeed(1, g.get("n"))),
                    of("accelerated_stall_speed", g -> Turn.stallSpeed(g.get("vs"), g.get("n"))),
                    of("load_factor_from_speed_ratio", TurnValues::highestLoadFactor),
                    of("turn_radius", g -> Turn.radius(g.airspeed(), g.bank())),
                    of("turn_radius_ft", g -> radiusFt(g, "tas_mph", "mph")),
                    of("turn_radius_ft_kt", g -> radiusFt(g, "v_kt", "kt")),
                    of("time_360", g -> Turn.time(g.airspeed(), g.bank())),
                    of("turn_rate_deg_s", g -> rateInDegrees(g, "v_kmh", "km/h")),
                    of("turn_rate_deg_s_kt", g -> rateInDegrees(g, "v_kt", "kt")),
                    of("sink_factor_in_turn", g -> SameAngleTurn.sinkRate(1, g.bank())),
                    of("sink_in_turn", g -> SameAngleTurn.sinkRate(g.get("w"), g.bank())),
                    of("spiral_pilot_load", TurnValues::spiralLoadFactor));

    private TurnValues() {}

    private static double highestLoadFactor(Given g) {
        return Turn.highestLoadFactor(g.get("v_over_vs"), 1);
    }

    private static double radiusFt(Given g, String speed, String unit) {
        return Units.get("ft").fromSi(Turn.radius(g.si(speed, unit), g.bank()));
    }

    private static double rateInDegrees(Given g, String speed, String unit) {
        return Math.toDegrees(Turn.rate(g.si(speed, unit), g.bank()));
    }

    private static double spiralLoadFactor(Given g) {
        return Turn.spiralLoadFactor(g.get("v_horizontal_ms"), g.get("radius_m"));
    }
}
