package org.groundline.theory;

/// The International Standard Atmosphere from sea level to the tropopause: dry air, geopotential
/// altitude, SI units.
///
/// Source: ICAO Doc 7488/3, *Manual of the ICAO Standard Atmosphere*, 3rd ed., 1993, from memory;
/// the values are checked against published tables of it.
public final class StandardAtmosphere {
    /// ρ₀ (kg/m³), air density at sea level.
    public static final double SEA_LEVEL_DENSITY = 1.225;

    /// g₀ (m/s²), standard gravity.
    public static final double GRAVITY = 9.80665;

    private static final double PRESSURE_0 = 101_325; // p₀ (Pa)
    private static final double TEMPERATURE_0 = 288.15; // T₀ (K)
    private static final double LAPSE_RATE = 0.0065; // L (K/m)
    private static final double GAS_CONSTANT = 287.052_87; // R (J/(kg K))
    private static final double PRESSURE_EXPONENT = GRAVITY / (GAS_CONSTANT * LAPSE_RATE); // 5.2559
    private static final double TROPOPAUSE = 11_000; // (m)

    private StandardAtmosphere() {}

    /// Answers: how warm is the standard air at this altitude? T = T₀ − L H.
    ///
    /// Neglects the weather: real air is often 20 K warmer or colder.
    ///
    /// @param altitude geopotential altitude H (m), 0 to 11 000
    /// @return temperature (K), 216.65 to 288.15
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double temperature(double altitude) {
        Require.between("altitude (m)", altitude, 0, TROPOPAUSE);
        return TEMPERATURE_0 - LAPSE_RATE * altitude;
    }

    /// Answers: what is the static pressure at this altitude? p = p₀ (T / T₀)^(g / (R L)).
    ///
    /// Neglects humidity and the day's pressure.
    ///
    /// @param altitude geopotential altitude (m), 0 to 11 000
    /// @return pressure (Pa), 22 632 to 101 325
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double pressure(double altitude) {
        return PRESSURE_0
                * StrictMath.pow(temperature(altitude) / TEMPERATURE_0, PRESSURE_EXPONENT);
    }

    /// Answers: how dense is the standard air at this altitude? ρ = p / (R T).
    ///
    /// Neglects humidity; moist air is somewhat thinner.
    ///
    /// @param altitude geopotential altitude (m), 0 to 11 000
    /// @return density (kg/m³), 0.364 to 1.225
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double density(double altitude) {
        return pressure(altitude) / (GAS_CONSTANT * temperature(altitude));
    }

    /// Answers: which part of the sea-level density is left at this altitude? σ = ρ / ρ₀.
    ///
    /// Neglects what [#density] neglects.
    ///
    /// @param altitude geopotential altitude (m), 0 to 11 000
    /// @return density ratio, 0.297 to 1
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
    /// @param altitude geopotential altitude (m), 0 to 11 000
    /// @return true airspeed (m/s), at least the equivalent one
    /// @throws IllegalArgumentException if an input is outside its range
    public static double trueAirspeed(double equivalentAirspeed, double altitude) {
        Require.positive("equivalent airspeed (m/s)", equivalentAirspeed);
        return equivalentAirspeed / Math.sqrt(densityRatio(altitude));
    }
}
