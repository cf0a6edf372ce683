package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of the turn.
final class TurnValues {
    static final Room ROOM =
            Room.named(
                    "turn",
                    of("load_factor", g -> Turn.loadFactor(g.bank())),
                    of(
                            "stall_speed_increase_pct",
                            g -> 100 * Turn.stallSpeed(1, Turn.loadFactor(g.bank())) - 100),
                    of("stall_speed_factor_from_n", g -> Turn.stallSpeed(1, g.get("n"))),
                    of("accelerated_stall_speed", g -> Turn.stallSpeed(g.get("vs"), g.get("n"))),
                    of("load_factor_from_speed_ratio", TurnValues::loadFactorByStallSpeed));

    private TurnValues() {}

    /// The load under which the stall speed is this many times higher, by bisection.
    private static double loadFactorByStallSpeed(Given g) {
        double low = 1;
        double high = 100;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (Turn.stallSpeed(1, middle) < g.get("v_over_vs")) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
