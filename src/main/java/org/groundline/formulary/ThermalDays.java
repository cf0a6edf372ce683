package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Lapse;
import org.groundline.theory.Storm;
import org.groundline.theory.Thermal;

import java.util.List;
import java.util.stream.Stream;

/// The thermal day, the freezing level, foehn and thunderstorms.
final class ThermalDays {
    private static final String LINES = "derived here, from constant lapse rates";
    private static final String NET = "derived here, from the air's speed and the glider's";
    private static final String TIME = "derived here, from distance over speed";

    private ThermalDays() {}

    static List<Quantity> quantities() {
        return Stream.of(thermals(), storms()).flatMap(List::stream).toList();
    }

    private static List<Quantity> thermals() {
        return List.of(
                new Quantity(
                        "thermal-climb",
                        "How fast does one climb in this thermal?",
                        List.of(
                                Input.of("updraft", "m/s", 1, 10),
                                Input.of("sink-in-turn", "m/s", 0.5, 3)),
                        Units.get("m/s"),
                        si -> Thermal.climb(si[0], si[1]),
                        NET),
                new Quantity(
                        "thermal-climb-time",
                        "How long does this gain of height take?",
                        List.of(
                                Input.of("gain", "m", 0, 4000),
                                Input.of("updraft", "m/s", 1, 10),
                                Input.of("sink-in-turn", "m/s", 0.5, 3)),
                        Units.get("s"),
                        si -> Thermal.climbTime(si[0], si[1], si[2]),
                        NET),
                new Quantity(
                        "time-to-cloud",
                        "How long until one must leave the climb, this far below the cloud?",
                        List.of(
                                Input.of("cloud-base", "m", 300, 5000),
                                Input.of("height", "m", 0, 4000),
                                Input.of("margin", "m", 50, 500),
                                Input.of("climb", "m/s", 0.2, 6)),
                        Units.get("s"),
                        si -> Thermal.timeToCloud(si[0], si[1], si[2], si[3]),
                        TIME),
                new Quantity(
                        "blue-thermal-top",
                        "How high above the ground do blue thermals go?",
                        List.of(
                                Input.of("surface-temperature", "°C", 0, 45),
                                Input.of("temperature-around", "°C", -10, 40),
                                Input.of("lapse-around", "K/km", -10, 9),
                                Input.of("dry-lapse", "K/km", 9.7, 10)),
                        Units.get("m"),
                        si -> Thermal.blueTop(si[0], si[1], si[2], si[3]),
                        LINES),
                new Quantity(
                        "trigger-temperature",
                        "How warm must it get at the ground for thermals to break through an inversion?",
                        List.of(
                                Input.of("inversion-temperature", "°C", -10, 30),
                                Input.of("height", "m", 0, 3000),
                                Input.of("dry-lapse", "K/km", 9.7, 10)),
                        Units.CELSIUS,
                        si -> Thermal.trigger(si[0], si[1], si[2]),
                        LINES),
                new Quantity(
                        "freezing-level",
                        "At which altitude does it freeze?",
                        List.of(
                                Input.of("elevation", "m", 0, 4000),
                                Input.of("temperature", "°C", 0, 40),
                                Input.of("lapse", "K/km", 3, 10)),
                        Units.get("m"),
                        si -> Thermal.freezingLevel(si[0], si[1], si[2]),
                        LINES),
                new Quantity(
                        "foehn-warming",
                        "By how much is the air warmer behind the mountains, if it rains out before them?",
                        List.of(
                                Input.of("cloud-base", "m", 0, 3000),
                                Input.of("ridge", "m", 500, 4500),
                                Input.of("dry-lapse", "K/km", 9.7, 10),
                                Input.of("saturated-lapse", "K/km", 3, 9.7)),
                        Units.get("K"),
                        si -> Thermal.foehnWarming(si[0], si[1], new Lapse.Rates(si[2], si[3])),
                        LINES));
    }

    private static List<Quantity> storms() {
        return List.of(
                new Quantity(
                        "lightning-distance",
                        "How far away was the lightning whose thunder came so much later?",
                        List.of(Input.of("delay", "s", 0, 60)),
                        Units.get("km"),
                        si -> Storm.lightningDistance(si[0]),
                        "derived here; the speed of sound, 340 m/s, is common practice, no source"),
                new Quantity(
                        "gust-front-arrival",
                        "How soon is a gust front here?",
                        List.of(
                                Input.of("distance", "km", 0, 60),
                                Input.of("front-speed", "km/h", 10, 120)),
                        Units.get("min"),
                        si -> Storm.frontArrival(si[0], si[1]),
                        TIME),
                new Quantity(
                        "gust-front-margin",
                        "How long before the gust front would one be down?",
                        List.of(
                                Input.of("distance", "km", 0, 60),
                                Input.of("front-speed", "km/h", 10, 120),
                                Input.of("height", "m", 0, 4000),
                                Input.of("sink-rate", "m/s", 0.5, 10)),
                        Units.get("min"),
                        si -> Storm.marginBeforeFront(si[0], si[1], si[2], si[3]),
                        TIME));
    }
}
