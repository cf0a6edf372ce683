package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Human;

import java.util.List;

/// The pilot: cold, thin air and reaction.
final class Humans {
    private static final String CHILL =
            "Joint Action Group on Temperature Indices, 2001; checked against Environment Canada's chart (archived page of 2006)";
    private static final String TIME = "derived here, from distance over speed";

    private Humans() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "wind-chill",
                        "How cold does this air feel on the face in this wind, by the metric formula?",
                        List.of(
                                Input.of("temperature", "°C", -50, 5),
                                Input.of("wind-speed", "km/h", 5, 100)),
                        Units.CELSIUS,
                        si -> Human.windChill(si[0], si[1]),
                        CHILL),
                new Quantity(
                        "wind-chill-us",
                        "How cold does this air feel on the face in this wind, by the formula in °F and mph?",
                        List.of(
                                Input.of("temperature", "°F", -50, 50),
                                Input.of("wind-speed", "mph", 3, 60)),
                        Units.FAHRENHEIT,
                        si -> Human.windChillUs(si[0], si[1]),
                        "U.S. National Weather Service, from memory; checked against a chart of its kind"),
                new Quantity(
                        "oxygen-pressure",
                        "Which pressure has the oxygen of the air at this altitude?",
                        List.of(Input.of("altitude", "m", 0, 5000)),
                        Units.get("hPa"),
                        si -> Human.oxygenPressure(si[0]),
                        "derived here, 20.95 % of the standard pressure"),
                new Quantity(
                        "reaction-distance",
                        "How far does one fly before anything is done?",
                        List.of(Input.of("speed", "km/h", 10, 150), Input.of("time", "s", 0.2, 5)),
                        Units.get("m"),
                        si -> Human.reactionDistance(si[0], si[1]),
                        TIME),
                new Quantity(
                        "closing-time",
                        "How long until two that fly head-on meet?",
                        List.of(
                                Input.of("distance", "m", 10, 3000),
                                Input.of("speed", "km/h", 15, 150),
                                Input.of("other-speed", "km/h", 15, 150)),
                        Units.get("s"),
                        si -> Human.closingTime(si[0], si[1], si[2]),
                        TIME));
    }
}
