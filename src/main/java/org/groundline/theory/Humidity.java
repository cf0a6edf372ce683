package org.groundline.theory;

/// Water vapour in the air, and what it does to the density.
///
/// The saturation pressure is that over liquid water, after Bolton: good to 0.1 % from −30 to 35 °C
/// (accuracy from memory), an orientation beyond; it is refused outside −80 to 60 °C.
///
/// Source: Bolton, *The Computation of Equivalent Potential Temperature*, Monthly Weather Review
/// 108, 1980, equation 10, as published check values reproduce it; the density of moist air is
/// derived here, from the ideal gas law with the ratio of molar masses 0.622.
public final class Humidity {
    static final double FREEZING = 273.15; // 0 °C (K)
    static final double VAPOUR_RATIO = 0.622; // ε, molar mass of water over that of dry air

    private static final double COLDEST = FREEZING - 80; // (K)
    private static final double WARMEST = FREEZING + 60; // (K)

    private Humidity() {}

    /// Answers: how much vapour can the air hold, as a pressure? e_s = 611.2 Pa exp(17.67 t / (t +
    /// 243.5)), t in °C.
    ///
    /// Neglects ice: below 0 °C the value is that over supercooled water.
    ///
    /// @param temperature (K), 193.15 to 333.15
    /// @return saturation vapour pressure (Pa), 0.08 to 20 000
    /// @throws IllegalArgumentException if the temperature is outside that range
    public static double saturationPressure(double temperature) {
        requireTemperature(temperature);
        double celsius = temperature - FREEZING;
        return 611.2 * StrictMath.exp(17.67 * celsius / (celsius + 243.5));
    }

    /// Answers: how much of the vapour that it could hold does the air hold? RH = e_s(T_d) /
    /// e_s(T).
    ///
    /// Neglects ice.
    ///
    /// @param temperature T (K), 193.15 to 333.15
    /// @param dewPoint T_d (K), 193.15 to the temperature
    /// @return relative humidity, 0 to 1
    /// @throws IllegalArgumentException if an input is outside its range
    public static double relativeHumidity(double temperature, double dewPoint) {
        requireDewPoint(temperature, dewPoint);
        return saturationPressure(dewPoint) / saturationPressure(temperature);
    }

    /// Answers: at which temperature does this air become saturated when it cools? The inverse of
    /// [#relativeHumidity]: with x = ln(e / 611.2 Pa), t_d = 243.5 x / (17.67 − x) in °C.
    ///
    /// Neglects ice.
    ///
    /// @param temperature (K), 193.15 to 333.15
    /// @param relativeHumidity above 0 to 1; so that the dew point is not below 193.15 K
    /// @return dew point (K), 193.15 to the temperature
    /// @throws IllegalArgumentException if an input or the answer is outside its range
    public static double dewPoint(double temperature, double relativeHumidity) {
        Require.positive("relative humidity", relativeHumidity);
        Require.between("relative humidity", relativeHumidity, 0, 1);
        double vapourPressure = relativeHumidity * saturationPressure(temperature);
        double exponent = StrictMath.log(vapourPressure / 611.2);
        double dewPoint = FREEZING + 243.5 * exponent / (17.67 - exponent);
        Require.between("dew point (K)", dewPoint, COLDEST, WARMEST);
        return dewPoint;
    }

    /// Answers: how dense is dry air of this pressure and temperature? ρ = p / (R T).
    ///
    /// Neglects humidity.
    ///
    /// @param pressure p (Pa), above zero
    /// @param temperature T (K), above zero
    /// @return density (kg/m³), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double dryDensity(double pressure, double temperature) {
        Require.positive("pressure (Pa)", pressure);
        Require.positive("temperature (K)", temperature);
        return pressure / (StandardAtmosphere.GAS_CONSTANT * temperature);
    }

    /// Answers: how warm would dry air be that is as thin as this moist air? T_v = T / (1 − (1 − ε)
    /// e / p).
    ///
    /// Neglects nothing of size.
    ///
    /// @param pressure p (Pa), above the vapour pressure e
    /// @param temperature T (K), 193.15 to 333.15
    /// @param dewPoint (K), 193.15 to the temperature; it gives e
    /// @return virtual temperature (K), at least the temperature
    /// @throws IllegalArgumentException if an input is outside its range
    public static double virtualTemperature(double pressure, double temperature, double dewPoint) {
        requireDewPoint(temperature, dewPoint);
        double vapourPressure = saturationPressure(dewPoint);
        requireAboveVapour(pressure, vapourPressure);
        return temperature / (1 - (1 - VAPOUR_RATIO) * vapourPressure / pressure);
    }

    /// Answers: how dense is this moist air? ρ = p / (R T_v), with the virtual temperature.
    ///
    /// Neglects nothing of size.
    ///
    /// @param pressure p (Pa), above the vapour pressure
    /// @param temperature (K), 193.15 to 333.15
    /// @param dewPoint (K), 193.15 to the temperature
    /// @return density (kg/m³), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double moistDensity(double pressure, double temperature, double dewPoint) {
        return dryDensity(pressure, virtualTemperature(pressure, temperature, dewPoint));
    }

    /// How many kilograms of vapour a kilogram of dry air holds when saturated.
    static double saturatedMixingRatio(double pressure, double temperature) {
        double vapourPressure = saturationPressure(temperature);
        requireAboveVapour(pressure, vapourPressure);
        return VAPOUR_RATIO * vapourPressure / (pressure - vapourPressure);
    }

    static void requireTemperature(double temperature) {
        Require.between("temperature (K)", temperature, COLDEST, WARMEST);
    }

    static void requireDewPoint(double temperature, double dewPoint) {
        requireTemperature(temperature);
        Require.between("dew point (K)", dewPoint, COLDEST, temperature);
    }

    /// Near its boiling point water has no mixing ratio that means anything; such a thin air is not
    /// met in flight.
    private static void requireAboveVapour(double pressure, double vapourPressure) {
        Require.positive("pressure (Pa)", pressure);
        if (pressure < 2 * vapourPressure) {
            throw Require.refused(
                    "pressure (Pa)",
                    pressure,
                    "must be at least twice the vapour pressure " + vapourPressure);
        }
    }
}
