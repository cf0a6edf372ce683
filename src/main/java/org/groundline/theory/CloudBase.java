package org.groundline.theory;

/// The base of cumulus above the place where temperature and dew point were measured.
///
/// Holds for cumulus from air that the ground heats and mixes well; not for fog, stratus, or a
/// thermometer in a valley inversion.
///
/// Sources: 400 ft for each kelvin after AFMAN 15-111, 12 March 2019, table 11.4; 125 m for each
/// kelvin and the form in relative humidity after Lawrence, *The Relationship between Relative
/// Humidity and the Dewpoint Temperature in Moist Air*, Bulletin of the American Meteorological
/// Society 86(2), 2005, page 225; condensation temperature after Bolton, Monthly Weather Review
/// 108, 1980, equation 15, from memory, checked against a published value; condensation level after
/// Romps, *Exact Expression for the Lifting Condensation Level*, Journal of the Atmospheric
/// Sciences 74, 2017, checked against the author's own test values.
public final class CloudBase {
    private static final double RULE_IN_METRES = 125; // (m/K)
    private static final double RULE_IN_FEET = 400 * 0.3048; // (m/K)

    private CloudBase() {}

    /// Answers: how high is the cloud base by the rule of 125 m for each kelvin of spread? h = 125
    /// m (T − T_d).
    ///
    /// Neglects pressure and temperature; the exact value differs by up to 6 %.
    ///
    /// @param spread T − T_d (K), zero or above
    /// @return cloud base above the station (m), zero or above
    /// @throws IllegalArgumentException if the spread is below zero
    public static double byMetreRule(double spread) {
        requireSpread(spread);
        return RULE_IN_METRES * spread;
    }

    /// Answers: how high is the cloud base by the rule of 400 ft for each kelvin of spread? h = 400
    /// ft (T − T_d).
    ///
    /// Neglects what [#byMetreRule] neglects.
    ///
    /// @param spread T − T_d (K), zero or above
    /// @return cloud base above the station (m), zero or above
    /// @throws IllegalArgumentException if the spread is below zero
    public static double byFeetRule(double spread) {
        requireSpread(spread);
        return RULE_IN_FEET * spread;
    }

    /// Answers: how high is the cloud base at this relative humidity? h = (20 + t / 5) (100 − RH),
    /// t in °C and RH in %.
    ///
    /// Published for a relative humidity above 50 %. Neglects pressure.
    ///
    /// @param temperature (K), 193.15 to 333.15
    /// @param relativeHumidity 0 to 1
    /// @return cloud base above the station (m), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double byHumidity(double temperature, double relativeHumidity) {
        Humidity.requireTemperature(temperature);
        Require.between("relative humidity", relativeHumidity, 0, 1);
        double celsius = temperature - Humidity.FREEZING;
        return (20 + celsius / 5) * 100 * (1 - relativeHumidity);
    }

    /// Answers: how cold is lifted air when it condenses?
    ///
    /// T_L = 1 / (1 / (T_d − 56) + ln(T / T_d) / 800) + 56.
    ///
    /// Neglects ice.
    ///
    /// @param temperature T (K), 193.15 to 333.15
    /// @param dewPoint T_d (K), 193.15 to the temperature
    /// @return temperature of condensation (K), at most the dew point
    /// @throws IllegalArgumentException if an input is outside its range
    public static double condensationTemperature(double temperature, double dewPoint) {
        Humidity.requireDewPoint(temperature, dewPoint);
        double spread = StrictMath.log(temperature / dewPoint) / 800;
        return 1 / (1 / (dewPoint - 56) + spread) + 56;
    }

    /// Answers: at which pressure does lifted air condense? The dry adiabat, followed to
    /// [#condensationTemperature].
    ///
    /// Neglects ice, and the vapour's share in the heat capacity.
    ///
    /// @param pressure where the air starts (Pa), above zero
    /// @param temperature there (K), 193.15 to 333.15
    /// @param dewPoint there (K), 193.15 to the temperature
    /// @return pressure of condensation (Pa), at most the starting one
    /// @throws IllegalArgumentException if an input is outside its range
    public static double condensationPressure(
            double pressure, double temperature, double dewPoint) {
        Require.positive("pressure (Pa)", pressure);
        double condensed = condensationTemperature(temperature, dewPoint);
        return pressure * StrictMath.pow(condensed / temperature, 1 / Lapse.KAPPA);
    }

    /// Answers: how far must this air rise to condense, without any rule of thumb? h = (c_p T / g)
    /// (1 − τ), where τ = T_L / T is the one solution below 1 of ln RH + a ln τ + b (1 − 1/τ) = 0;
    /// see [Condensation].
    ///
    /// Neglects mixing with the air around, and ice.
    ///
    /// @param pressure (Pa), at least twice the vapour's
    /// @param temperature T (K), 193.15 to 333.15
    /// @param relativeHumidity RH over liquid water, 0.0001 to 1
    /// @return condensation level above the start (m), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double condensationLevel(
            double pressure, double temperature, double relativeHumidity) {
        return new Condensation(pressure, temperature, relativeHumidity).level();
    }

    private static void requireSpread(double spread) {
        Require.notNegative("spread (K)", spread);
    }
}
