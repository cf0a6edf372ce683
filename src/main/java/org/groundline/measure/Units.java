package org.groundline.measure;

import static java.util.stream.Collectors.toUnmodifiableMap;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// The closed table of units met here. A new unit is one line; the reader of typed numbers and the
/// bank's templates know it from then on.
///
/// Factors are exact: 1 ft = 0.3048 m, 1 NM = 1852 m, 1 mile = 1609.344 m, 1 lb = 0.45359237 kg; an
/// inch of mercury is that of the conventional millimetre, 133.322387415 Pa.
public final class Units {
    public static final Unit NUMBER = unit("", Dimension.NUMBER, "1", ":1", "to1", "g");
    public static final Unit KELVIN = unit("K", Dimension.TEMPERATURE, "1", "kelvin");
    public static final Unit CELSIUS =
            new Unit(
                    "°C",
                    Dimension.TEMPERATURE,
                    BigDecimal.ONE,
                    BigDecimal.ONE,
                    new BigDecimal("273.15"),
                    List.of("C", "degC", "ºC", "˚C", "celsius"));

    /// 459.67 · 5/9 K to 34 digits.
    public static final Unit FAHRENHEIT =
            new Unit(
                    "°F",
                    Dimension.TEMPERATURE,
                    new BigDecimal("5"),
                    new BigDecimal("9"),
                    new BigDecimal("255.3722222222222222222222222222222"),
                    List.of("F", "degF", "ºF", "˚F", "fahrenheit"));

    /// π to 34 digits over 180.
    public static final Unit DEGREE =
            ratio(
                    "°",
                    Dimension.ANGLE,
                    "3.141592653589793238462643383279503",
                    "180",
                    "º",
                    "˚",
                    "deg",
                    "degree",
                    "degrees");

    private static final List<Unit> ALL =
            List.of(
                    NUMBER,
                    ratio("%", Dimension.NUMBER, "1", "100", "percent", "pct"),
                    unit("m", Dimension.LENGTH, "1", "metre", "metres", "meter", "meters"),
                    unit("km", Dimension.LENGTH, "1000", "kilometre", "kilometres", "kilometers"),
                    unit("cm", Dimension.LENGTH, "0.01", "centimetre", "centimetres"),
                    unit("ft", Dimension.LENGTH, "0.3048", "foot", "feet"),
                    unit("NM", Dimension.LENGTH, "1852", "nmi", "nauticalmile", "nauticalmiles"),
                    unit("m²", Dimension.AREA, "1", "m2", "m^2", "sqm"),
                    unit("m/s", Dimension.SPEED, "1", "mps", "m/sec"),
                    ratio("km/h", Dimension.SPEED, "1000", "3600", "kmh", "kph", "kmph", "km/hr"),
                    ratio("kt", Dimension.SPEED, "1852", "3600", "kts", "kn", "knot", "knots"),
                    unit("mph", Dimension.SPEED, "0.44704", "mi/h"),
                    ratio("ft/min", Dimension.SPEED, "0.3048", "60", "fpm"),
                    unit("m/s²", Dimension.ACCELERATION, "1", "m/s2", "m/s^2"),
                    unit("s/m", Dimension.SLOWNESS, "1"),
                    new Unit(
                            "°/s",
                            Dimension.TURN_RATE,
                            DEGREE.numerator(),
                            DEGREE.denominator(),
                            BigDecimal.ZERO,
                            List.of("deg/s", "degrees/s")),
                    unit("rad/s", Dimension.TURN_RATE, "1"),
                    unit("kg", Dimension.MASS, "1", "kilo", "kilos", "kilogram", "kilograms"),
                    unit("lb", Dimension.MASS, "0.45359237", "lbs", "pound", "pounds"),
                    unit("kg/m²", Dimension.LOADING, "1", "kg/m2", "kg/m^2"),
                    unit("kg/m³", Dimension.DENSITY, "1", "kg/m3", "kg/m^3"),
                    unit("N", Dimension.FORCE, "1", "newton", "newtons"),
                    unit("kN", Dimension.FORCE, "1000"),
                    unit("N/m²", Dimension.PRESSURE, "1", "N/m2", "N/m^2"),
                    unit("Pa", Dimension.PRESSURE, "1", "pascal"),
                    unit("hPa", Dimension.PRESSURE, "100", "mbar", "mb"),
                    unit("J", Dimension.ENERGY, "1", "joule", "joules"),
                    unit("kJ", Dimension.ENERGY, "1000"),
                    unit("inHg", Dimension.PRESSURE, "3386.388640341"),
                    unit("m/hPa", Dimension.HEIGHT_PER_PRESSURE, "0.01"),
                    unit("ft/hPa", Dimension.HEIGHT_PER_PRESSURE, "0.003048"),
                    KELVIN,
                    CELSIUS,
                    FAHRENHEIT,
                    ratio("K/km", Dimension.LAPSE, "1", "1000", "°C/km", "C/km"),
                    unit("s", Dimension.TIME, "1", "sec", "secs", "second", "seconds"),
                    unit("min", Dimension.TIME, "60", "mins", "minute", "minutes"),
                    unit("h", Dimension.TIME, "3600", "hr", "hrs", "hour", "hours"),
                    DEGREE,
                    unit("rad", Dimension.ANGLE, "1", "radian", "radians"));

    private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u2009\\u202F]");
    private static final Map<String, Unit> BY_SPELLING = bySpelling();
    private static final Map<String, Unit> BY_LOWER_CASE = byLowerCase();

    private Units() {}

    public static List<Unit> all() {
        return ALL;
    }

    /// Finds a unit by its symbol or another spelling; spaces do not count, and neither does case
    /// unless two units differ by nothing else.
    public static Optional<Unit> find(String text) {
        String packed = SPACES.matcher(text).replaceAll("");
        return Optional.ofNullable(BY_SPELLING.get(packed))
                .or(() -> Optional.ofNullable(BY_LOWER_CASE.get(packed.toLowerCase(Locale.ROOT))));
    }

    /// Gets a unit that our own code names.
    public static Unit get(String symbol) {
        return find(symbol).orElseThrow(() -> new IllegalArgumentException("no unit " + symbol));
    }

    private static Map<String, Unit> bySpelling() {
        var units = new HashMap<String, Unit>();
        for (Unit unit : ALL) {
            units.put(unit.symbol(), unit);
            unit.spellings().forEach(s -> units.put(s, unit));
        }
        return Map.copyOf(units);
    }

    /// Spellings without regard to case, less those that would mean two units.
    private static Map<String, Unit> byLowerCase() {
        var units = new HashMap<String, List<Unit>>();
        BY_SPELLING.forEach(
                (spelling, unit) ->
                        units.merge(
                                spelling.toLowerCase(Locale.ROOT), List.of(unit), Units::joined));
        return units.entrySet().stream()
                .filter(e -> e.getValue().size() == 1)
                .collect(toUnmodifiableMap(Map.Entry::getKey, e -> e.getValue().getFirst()));
    }

    private static List<Unit> joined(List<Unit> some, List<Unit> more) {
        return Stream.concat(some.stream(), more.stream()).distinct().toList();
    }

    private static Unit unit(String symbol, Dimension dimension, String si, String... spellings) {
        return ratio(symbol, dimension, si, "1", spellings);
    }

    private static Unit ratio(
            String symbol, Dimension dimension, String over, String under, String... spellings) {
        return new Unit(
                symbol,
                dimension,
                new BigDecimal(over),
                new BigDecimal(under),
                BigDecimal.ZERO,
                List.of(spellings));
    }
}
