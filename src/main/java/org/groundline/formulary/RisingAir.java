package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Glide;
import org.groundline.theory.Soaring;

import java.util.List;

/// Rising air: what is left of it, where it carries the glider, and how far it takes one.
final class RisingAir {
    private static final String SOURCE = "derived from speed, time and distance";

    private RisingAir() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "net-sink",
                        "How fast does one come down in this lift (below zero: climb)?",
                        List.of(
                                Input.of("sink-rate", "m/s", 0.5, 20),
                                Input.of("updraft", "m/s", 0, 15)),
                        Units.get("m/s"),
                        si -> Soaring.netSink(si[0], si[1]),
                        SOURCE),
                new Quantity(
                        "drift-in-climb",
                        "How far does the wind carry a glider that circles up?",
                        List.of(
                                Input.of("gain", "m", 0, 5000),
                                Input.of("climb", "m/s", 0.1, 10),
                                Input.of("wind", "km/h", 0, 60)),
                        Units.get("m"),
                        si -> Soaring.drift(si[0], si[1], si[2]),
                        SOURCE),
                new Quantity(
                        "height-to-return",
                        "How much of the gained height does the way back against the wind take?",
                        List.of(
                                Input.of("gain", "m", 0, 5000),
                                Input.of("climb", "m/s", 0.1, 10),
                                Input.of("wind", "km/h", 0, 60),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("sink-rate", "m/s", 0.5, 20)),
                        Units.get("m"),
                        si -> heightToReturn(si[0], si[1], si[2], si[3], si[4]),
                        SOURCE),
                new Quantity(
                        "cross-country-speed",
                        "How fast across country on average, climbing and gliding in turn?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("descent-rate", "m/s", 0.5, 20),
                                Input.of("climb", "m/s", 0.1, 10)),
                        Units.get("km/h"),
                        si -> Soaring.crossCountrySpeed(si[0], si[1], si[2]),
                        SOURCE));
    }

    private static double heightToReturn(
            double gain, double climb, double wind, double airspeed, double sinkRate) {
        double back = Soaring.drift(gain, climb, wind);
        return Glide.heightNeeded(back, Glide.groundSpeed(airspeed, wind), sinkRate, 0);
    }
}
