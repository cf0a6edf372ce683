package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Beaufort;
import org.groundline.theory.Wind;

import java.util.List;
import java.util.stream.Stream;

/// The wind: along and across the way, the triangle, the scale.
final class Winds {
    private static final String VECTORS = "derived here, from vectors";
    private static final String SCALE =
            "the Beaufort scale: forces 1 to 8 by the Met Office's table, the others by public copies";

    private Winds() {}

    static List<Quantity> quantities() {
        return Stream.of(parts(), triangle(), scale()).flatMap(List::stream).toList();
    }

    private static List<Quantity> parts() {
        return List.of(
                new Quantity(
                        "wind-angle",
                        "From how far off the course does the wind come?",
                        List.of(
                                Input.of("course", "°", 0, 360),
                                Input.of("wind-from", "°", 0, 360)),
                        Units.get("°"),
                        si -> Wind.angle(si[0], si[1]),
                        VECTORS),
                new Quantity(
                        "headwind",
                        "How much of the wind blows against the way?",
                        List.of(
                                Input.of("wind-speed", "km/h", 0, 60),
                                Input.of("angle", "°", -180, 180)),
                        Units.get("km/h"),
                        si -> Wind.headwind(si[0], si[1]),
                        VECTORS),
                new Quantity(
                        "crosswind",
                        "How much of the wind blows across the way, from the right?",
                        List.of(
                                Input.of("wind-speed", "km/h", 0, 60),
                                Input.of("angle", "°", -180, 180)),
                        Units.get("km/h"),
                        si -> Wind.crosswind(si[0], si[1]),
                        VECTORS),
                new Quantity(
                        "wind-eastward",
                        "How fast does this wind carry to the east?",
                        List.of(
                                Input.of("wind-speed", "km/h", 0, 60),
                                Input.of("wind-from", "°", 0, 360)),
                        Units.get("km/h"),
                        si -> Wind.eastward(si[0], si[1]),
                        VECTORS),
                new Quantity(
                        "wind-northward",
                        "How fast does this wind carry to the north?",
                        List.of(
                                Input.of("wind-speed", "km/h", 0, 60),
                                Input.of("wind-from", "°", 0, 360)),
                        Units.get("km/h"),
                        si -> Wind.northward(si[0], si[1]),
                        VECTORS),
                new Quantity(
                        "wind-speed",
                        "How strong is a wind that carries so fast to the east and to the north?",
                        List.of(
                                Input.of("eastward", "km/h", -60, 60),
                                Input.of("northward", "km/h", -60, 60)),
                        Units.get("km/h"),
                        si -> Wind.speed(si[0], si[1]),
                        VECTORS),
                new Quantity(
                        "wind-from",
                        "Where does a wind come from that carries so fast to the east and to the north?",
                        List.of(
                                Input.of("eastward", "km/h", -60, 60),
                                Input.of("northward", "km/h", -60, 60)),
                        Units.get("°"),
                        si -> Wind.from(si[0], si[1]),
                        VECTORS));
    }

    private static List<Quantity> triangle() {
        return List.of(
                new Quantity(
                        "wind-correction-angle",
                        "How far to the right must the nose point to stay on course?",
                        List.of(
                                Input.of("airspeed", "km/h", 20, 120),
                                Input.of("wind-speed", "km/h", 0, 60),
                                Input.of("angle", "°", -180, 180)),
                        Units.get("°"),
                        si -> Wind.correctionAngle(si[0], si[1], si[2]),
                        VECTORS),
                new Quantity(
                        "heading",
                        "Which heading keeps this course?",
                        List.of(
                                Input.of("airspeed", "km/h", 20, 120),
                                Input.of("course", "°", 0, 360),
                                Input.of("wind-from", "°", 0, 360),
                                Input.of("wind-speed", "km/h", 0, 60)),
                        Units.get("°"),
                        si -> Wind.heading(si[0], si[1], si[2], si[3]),
                        VECTORS),
                new Quantity(
                        "ground-speed-on-course",
                        "How fast over the ground on a course in wind from any side?",
                        List.of(
                                Input.of("airspeed", "km/h", 20, 120),
                                Input.of("wind-speed", "km/h", 0, 60),
                                Input.of("angle", "°", -180, 180)),
                        Units.get("km/h"),
                        si -> Wind.groundSpeed(si[0], si[1], si[2]),
                        VECTORS));
    }

    private static List<Quantity> scale() {
        return List.of(
                new Quantity(
                        "beaufort-force",
                        "Which Beaufort force has this mean wind?",
                        List.of(Input.of("wind-speed", "km/h", 0, 120)),
                        Units.NUMBER,
                        si -> Beaufort.force(si[0]),
                        SCALE),
                new Quantity(
                        "beaufort-lowest",
                        "From which wind on is it this Beaufort force?",
                        List.of(Input.of("force", "", 0, 10)),
                        Units.get("kt"),
                        si -> Beaufort.lowest(si[0]),
                        SCALE),
                new Quantity(
                        "beaufort-highest",
                        "Up to which wind is it this Beaufort force?",
                        List.of(Input.of("force", "", 0, 10)),
                        Units.get("kt"),
                        si -> Beaufort.highest(si[0]),
                        SCALE),
                new Quantity(
                        "beaufort-mean",
                        "Which wind stands for this Beaufort force?",
                        List.of(Input.of("force", "", 0, 12)),
                        Units.get("m/s"),
                        si -> Beaufort.meanSpeed(si[0]),
                        "World Meteorological Organization, v = 0.836 B^1.5 m/s, from memory"));
    }
}
