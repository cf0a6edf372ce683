package org.groundline.theory;

import static org.groundline.theory.Room.of;

import org.groundline.measure.Units;

/// Check values of the pilot: cold, thin air and reaction.
final class HumanValues {
    static final Room ROOM =
            Room.named(
                    "human",
                    of("wind_chill_C", HumanValues::windChillC),
                    of("wind_chill_F", HumanValues::windChillF),
                    of("ambient_po2", g -> Human.oxygenPressure(g.get("h_m")) / 100),
                    of("oxygen_share_of_sea_level", HumanValues::oxygenShare),
                    of(
                            "reaction_distance",
                            g -> Human.reactionDistance(g.airspeed(), g.get("t_s"))),
                    of("closing_time", HumanValues::closingTime));

    private HumanValues() {}

    private static double windChillC(Given g) {
        return Human.windChill(g.si("t_C", "°C"), g.airspeed()) - 273.15;
    }

    private static double windChillF(Given g) {
        double chill = Human.windChillUs(g.si("t_F", "°F"), g.si("v_mph", "mph"));
        return Units.get("°F").fromSi(chill);
    }

    private static double oxygenShare(Given g) {
        return Human.oxygenPressure(g.si("alt_ft", "ft")) / Human.oxygenPressure(0);
    }

    private static double closingTime(Given g) {
        return Human.closingTime(
                g.get("distance_m"), g.si("v1_kmh", "km/h"), g.si("v2_kmh", "km/h"));
    }
}
