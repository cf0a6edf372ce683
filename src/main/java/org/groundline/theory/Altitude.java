package org.groundline.theory;

/// Pressure altitude and density altitude: where in the standard atmosphere the air of today would
/// be found.
///
/// Sources: ICAO Doc 7488/3, 1993, from memory, for the exact forms; the values are checked against
/// FAA-H-8083-13B, *Glider Flying Handbook*, 2024, pages 5-1 to 5-3. The rules of thumb (8.3 m or
/// 27 ft for each hectopascal, 120 ft for each kelvin) are common practice, no source.
public final class Altitude {
    private static final double RULE_OF_120_FT = 120 * 0.3048; // (m/K)

    private Altitude() {}

    /// Answers: which altitude does an altimeter set to 1013.25 hPa show at this pressure? PA = (T₀
    /// / L) (1 − (p / p₀)^(R L / g)).
    ///
    /// Neglects the instrument's error.
    ///
    /// @param pressure static pressure p (Pa), 22 632 to 177 687
    /// @return pressure altitude (m), −5 000 to 11 000
    /// @throws IllegalArgumentException if the pressure is outside that range
    public static double pressureAltitude(double pressure) {
        return StandardAtmosphere.altitudeAtPressure(pressure);
    }

    /// Answers: which pressure altitude has a field at this altimeter setting? PA = elevation +
    /// PA(QNH); a low QNH raises it.
    ///
    /// Neglects nothing beyond what the altimeter setting itself neglects.
    ///
    /// @param elevation of the field above sea level (m), −5 000 to 11 000
    /// @param qnh altimeter setting (Pa), 22 632 to 177 687
    /// @return pressure altitude (m), −5 000 to 11 000
    /// @throws IllegalArgumentException if an input or the answer is outside its range
    public static double pressureAltitudeOfField(double elevation, double qnh) {
        Require.between("elevation (m)", elevation, -5_000, 11_000);
        double altitude = elevation + pressureAltitude(qnh);
        Require.between("pressure altitude (m) of the field", altitude, -5_000, 11_000);
        return altitude;
    }

    /// Answers: which pressure altitude has a field, by a rule of so many metres for each unit of
    /// pressure? PA = elevation + (p₀ − QNH) k.
    ///
    /// Neglects that k grows with altitude.
    ///
    /// @param elevation of the field above sea level (m), −5 000 to 11 000
    /// @param qnh altimeter setting (Pa), above zero
    /// @param heightPerPressure k of the rule (m/Pa), above zero; 8.3 m or 27 ft for each
    ///   hectopascal is common practice
    /// @return pressure altitude (m), of any sign
    /// @throws IllegalArgumentException if an input is outside its range
    public static double pressureAltitudeByRule(
            double elevation, double qnh, double heightPerPressure) {
        Require.between("elevation (m)", elevation, -5_000, 11_000);
        Require.positive("altimeter setting (Pa)", qnh);
        Require.positive("height per pressure (m/Pa)", heightPerPressure);
        return elevation + (StandardAtmosphere.PRESSURE_0 - qnh) * heightPerPressure;
    }

    /// Answers: at which altitude is the standard air as thin as this dry air? DA = (T₀ / L) (1 −
    /// ((p / p₀) / (T / T₀))^(1/n)), n = g / (R L) − 1.
    ///
    /// Neglects humidity; moist air is thinner, so that the true value is somewhat higher.
    ///
    /// @param pressureAltitude (m), −5 000 to 11 000
    /// @param temperature outside air temperature T (K), above zero
    /// @return density altitude (m), −5 000 to 11 000
    /// @throws IllegalArgumentException if an input or the answer is outside its range
    public static double densityAltitude(double pressureAltitude, double temperature) {
        double pressure = StandardAtmosphere.pressure(pressureAltitude);
        return StandardAtmosphere.altitudeAtDensity(Humidity.dryDensity(pressure, temperature));
    }

    /// Answers: at which altitude is the standard air as thin as this moist air? As
    /// [#densityAltitude], with the virtual temperature in place of T.
    ///
    /// Neglects nothing that could be measured in the field.
    ///
    /// @param pressureAltitude (m), −5 000 to 11 000
    /// @param temperature outside air temperature (K), 193.15 to 333.15
    /// @param dewPoint (K), 193.15 to the temperature
    /// @return density altitude (m), −5 000 to 11 000
    /// @throws IllegalArgumentException if an input or the answer is outside its range
    public static double densityAltitudeMoist(
            double pressureAltitude, double temperature, double dewPoint) {
        double pressure = StandardAtmosphere.pressure(pressureAltitude);
        return StandardAtmosphere.altitudeAtDensity(
                Humidity.moistDensity(pressure, temperature, dewPoint));
    }

    /// Answers: what is the density altitude by the rule of 120 ft for each kelvin above standard?
    /// DA = PA + 120 ft (T − T_ISA), the standard temperature taken at the pressure altitude.
    ///
    /// Neglects humidity, and that 120 is 118.8 on the dry slope near the standard temperature.
    ///
    /// @param pressureAltitude PA (m), −5 000 to 11 000
    /// @param temperature outside air temperature T (K), above zero
    /// @return density altitude by the rule (m), of any sign
    /// @throws IllegalArgumentException if an input is outside its range
    public static double densityAltitudeByRule(double pressureAltitude, double temperature) {
        Require.positive("temperature (K)", temperature);
        double standard = StandardAtmosphere.temperature(pressureAltitude);
        return pressureAltitude + RULE_OF_120_FT * (temperature - standard);
    }
}
