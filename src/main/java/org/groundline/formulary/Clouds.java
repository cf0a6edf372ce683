package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.CloudBase;
import org.groundline.theory.Lapse;

import java.util.List;
import java.util.stream.Stream;

/// Cloud base, and the temperature of rising air.
final class Clouds {
    private static final String LAWRENCE =
            "Lawrence, Bulletin of the American Meteorological Society 86(2), 2005, page 225";
    private static final String BOLTON =
            "Bolton, Monthly Weather Review 108, 1980, equation 15, from memory; checked against a published value";
    private static final String LINES = "derived here, from constant lapse rates";
    private static final String ADIABAT =
            "from memory; checked against published test values of a meteorological library";

    private Clouds() {}

    static List<Quantity> quantities() {
        return Stream.of(bases(), risingAir()).flatMap(List::stream).toList();
    }

    private static List<Quantity> bases() {
        return List.of(
                new Quantity(
                        "cloud-base",
                        "How high above the station is the cloud base, by 125 m for each kelvin of spread?",
                        List.of(Input.of("spread", "K", 0, 25)),
                        Units.get("m"),
                        si -> CloudBase.byMetreRule(si[0]),
                        LAWRENCE),
                new Quantity(
                        "cloud-base-by-feet-rule",
                        "How high above the station is the cloud base, by 400 ft for each kelvin of spread?",
                        List.of(Input.of("spread", "K", 0, 25)),
                        Units.get("ft"),
                        si -> CloudBase.byFeetRule(si[0]),
                        "AFMAN 15-111, 12 March 2019, table 11.4"),
                new Quantity(
                        "cloud-base-by-humidity",
                        "How high above the station is the cloud base at this relative humidity?",
                        List.of(
                                Input.of("temperature", "°C", 0, 40),
                                Input.of("relative-humidity", "%", 50, 100)),
                        Units.get("m"),
                        si -> CloudBase.byHumidity(si[0], si[1]),
                        LAWRENCE),
                new Quantity(
                        "condensation-level",
                        "How far must this air rise to condense, without any rule of thumb?",
                        List.of(
                                Input.of("pressure", "hPa", 600, 1050),
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("relative-humidity", "%", 5, 100)),
                        Units.get("m"),
                        si -> CloudBase.condensationLevel(si[0], si[1], si[2]),
                        "Romps, Journal of the Atmospheric Sciences 74, 2017"),
                new Quantity(
                        "condensation-temperature",
                        "How cold is lifted air when it condenses?",
                        List.of(
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("dew-point", "°C", -30, 25)),
                        Units.CELSIUS,
                        si -> CloudBase.condensationTemperature(si[0], si[1]),
                        BOLTON),
                new Quantity(
                        "condensation-pressure",
                        "At which pressure does lifted air condense?",
                        List.of(
                                Input.of("pressure", "hPa", 600, 1050),
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("dew-point", "°C", -30, 25)),
                        Units.get("hPa"),
                        si -> CloudBase.condensationPressure(si[0], si[1], si[2]),
                        BOLTON));
    }

    private static List<Quantity> risingAir() {
        return List.of(
                new Quantity(
                        "dry-lapse-rate",
                        "By how much does dry air cool when it rises?",
                        List.of(),
                        Units.get("K/km"),
                        si -> Lapse.dry(),
                        "derived here, g / c_p with 1005 J/(kg K)"),
                new Quantity(
                        "saturated-lapse-rate",
                        "By how much does saturated air cool when it rises?",
                        List.of(
                                Input.of("pressure", "hPa", 400, 1050),
                                Input.of("temperature", "°C", -40, 35)),
                        Units.get("K/km"),
                        si -> Lapse.saturated(si[0], si[1]),
                        ADIABAT),
                new Quantity(
                        "lifted-temperature",
                        "How warm is air after rising by so much?",
                        List.of(
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("rise", "m", -4000, 4000),
                                Input.of("lapse", "K/km", -10, 10)),
                        Units.CELSIUS,
                        si -> Lapse.lifted(si[0], si[1], si[2]),
                        LINES),
                new Quantity(
                        "temperature-in-cloud",
                        "How warm is air that rises dry to the cloud base and saturated from there?",
                        List.of(
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("rise", "m", 0, 6000),
                                Input.of("cloud-base", "m", 0, 5000),
                                Input.of("dry-lapse", "K/km", 9.7, 10),
                                Input.of("saturated-lapse", "K/km", 3, 9.7)),
                        Units.CELSIUS,
                        si ->
                                Lapse.liftedIntoCloud(
                                        si[0], si[1], si[2], new Lapse.Rates(si[3], si[4])),
                        LINES),
                new Quantity(
                        "dry-adiabat",
                        "How warm is dry air brought to another pressure?",
                        List.of(
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("pressure", "hPa", 400, 1050),
                                Input.of("new-pressure", "hPa", 300, 1050)),
                        Units.CELSIUS,
                        si -> Lapse.dryAdiabat(si[0], si[1], si[2]),
                        ADIABAT),
                new Quantity(
                        "saturated-adiabat",
                        "How warm is saturated air that rises to another pressure?",
                        List.of(
                                Input.of("temperature", "°C", -30, 35),
                                Input.of("pressure", "hPa", 500, 1050),
                                Input.of("new-pressure", "hPa", 300, 1050)),
                        Units.CELSIUS,
                        si -> Lapse.saturatedAdiabat(si[0], si[1], si[2]),
                        ADIABAT));
    }
}
