package org.groundline.theory;

/// The International Standard Atmosphere up to the tropopause: dry air, geopotential altitude, SI
/// units. Below sea level the same straight line is carried on, as altimeters do.
///
/// Source: ICAO Doc 7488/3, *Manual of the ICAO Standard Atmosphere*, 3rd ed., 1993, from memory;
/// the values are checked against published tables of it, and against geometric heights of the U.S.
/// Standard Atmosphere, 1976.
public final class StandardAtmosphere {
    /// ρ₀ (kg/m³), air density at sea level.
    public static final double SEA_LEVEL_DENSITY = 1.225;

    /// g₀ (m/s²), standard gravity.
    public static final double GRAVITY = 9.80665;

    static final double PRESSURE_0 = 101_325; // p₀ (Pa)
    static final double TEMPERATURE_0 = 288.15; // T₀ (K)
    static final double LAPSE_RATE = 0.0065; // L (K/m)
    static final double GAS_CONSTANT = 287.052_87; // R (J/(kg K))

    private static final double PRESSURE_EXPONENT = GRAVITY / (GAS_CONSTANT * LAPSE_RATE); // 5.2559
    private static final double DENSITY_EXPONENT = PRESSURE_EXPONENT - 1; // 4.2559
    private static final double LOWEST = -5_000; // (m)
    private static final double TROPOPAUSE = 11_000; // (m)
    private static final double EARTH_RADIUS = 6_356_766; // r (m), as the standard takes it

    private StandardAtmosphere() {}

    /// Answers: how warm is the standard air at this altitude? T = T₀ − L H.
    ///
    /// Neglects the weather: real air is often 20 K warmer or colder.
    ///
    /// @param altitude geopotential altitude H (m), −5 000 to 11 000
    /// @return temperature (K), 216.65 to 320.65
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double temperature(double altitude) {
        requireWithin("altitude (m)", altitude);
        return TEMPERATURE_0 - LAPSE_RATE * altitude;
    }

    /// Answers: what is the static pressure at this altitude? p = p₀ (T / T₀)^(g / (R L)).
    ///
    /// Neglects humidity and the day's pressure.
    ///
    /// @param altitude geopotential altitude (m), −5 000 to 11 000
    /// @return pressure (Pa), 22 632 to 177 687
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double pressure(double altitude) {
        return PRESSURE_0
                * StrictMath.pow(temperature(altitude) / TEMPERATURE_0, PRESSURE_EXPONENT);
    }

    /// Answers: how dense is the standard air at this altitude? ρ = p / (R T).
    ///
    /// Neglects humidity; moist air is somewhat thinner.
    ///
    /// @param altitude geopotential altitude (m), −5 000 to 11 000
    /// @return density (kg/m³), 0.364 to 1.931
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double density(double altitude) {
        return pressure(altitude) / (GAS_CONSTANT * temperature(altitude));
    }

    /// Answers: which part of the sea-level density is left at this altitude? σ = ρ / ρ₀.
    ///
    /// Neglects what [#density] neglects.
    ///
    /// @param altitude geopotential altitude (m), −5 000 to 11 000
    /// @return density ratio, 0.297 to 1.576
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double densityRatio(double altitude) {
        return density(altitude) / SEA_LEVEL_DENSITY;
    }

    /// Answers: how fast through the air is this indicated airspeed? V = V_E √(ρ₀ / ρ).
    ///
    /// Neglects the instrument's error and compressibility, so that indicated and equivalent
    /// airspeed are the same.
    ///
    /// @param equivalentAirspeed V_E (m/s), above zero
    /// @param altitude geopotential altitude (m), −5 000 to 11 000
    /// @return true airspeed (m/s), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double trueAirspeed(double equivalentAirspeed, double altitude) {
        Require.positive("equivalent airspeed (m/s)", equivalentAirspeed);
        return equivalentAirspeed / Math.sqrt(densityRatio(altitude));
    }

    /// Answers: which geopotential altitude has this geometric height? H = r z / (r + z).
    ///
    /// Neglects that the earth is not a ball; at 5 km the two differ by 4 m.
    ///
    /// @param height geometric height z above sea level (m), −4 996 to 11 019
    /// @return geopotential altitude (m), −5 000 to 11 000
    /// @throws IllegalArgumentException if the height or the altitude is outside that range
    public static double geopotentialAltitude(double height) {
        Require.between("height (m)", height, LOWEST, 2 * TROPOPAUSE);
        double altitude = EARTH_RADIUS * height / (EARTH_RADIUS + height);
        requireWithin("altitude (m) of the height " + height, altitude);
        return altitude;
    }

    /// Answers: at which altitude does the standard air have this pressure? The inverse of
    /// [#pressure], H = (T₀ / L) (1 − (p / p₀)^(R L / g)).
    ///
    /// Neglects what [#pressure] neglects.
    ///
    /// @param pressure p (Pa), 22 632 to 177 687
    /// @return altitude (m), −5 000 to 11 000
    /// @throws IllegalArgumentException if the pressure is outside that range
    public static double altitudeAtPressure(double pressure) {
        Require.positive("pressure (Pa)", pressure);
        return altitudeAt("pressure (Pa)", pressure, pressure / PRESSURE_0, PRESSURE_EXPONENT);
    }

    /// Answers: at which altitude is the standard air as dense as this? The inverse of [#density],
    /// H = (T₀ / L) (1 − σ^(1/n)), n = g / (R L) − 1.
    ///
    /// Neglects what [#density] neglects.
    ///
    /// @param density ρ (kg/m³), 0.364 to 1.931
    /// @return altitude (m), −5 000 to 11 000
    /// @throws IllegalArgumentException if the density is outside that range
    public static double altitudeAtDensity(double density) {
        Require.positive("density (kg/m³)", density);
        double ratio = density * GAS_CONSTANT * TEMPERATURE_0 / PRESSURE_0;
        return altitudeAt("density (kg/m³)", density, ratio, DENSITY_EXPONENT);
    }

    private static double altitudeAt(String quantity, double value, double ratio, double exponent) {
        double altitude = TEMPERATURE_0 / LAPSE_RATE * (1 - StrictMath.pow(ratio, 1 / exponent));
        requireWithin("altitude (m) of the %s %s".formatted(quantity, value), altitude);
        return altitude;
    }

    private static void requireWithin(String quantity, double altitude) {
        Require.between(quantity, altitude, LOWEST, TROPOPAUSE);
    }
}
