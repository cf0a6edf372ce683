package org.groundline.theory;

/// What an altimeter shows and what is true: settings, field pressure, flight levels, cold air.
///
/// Sources: FAA-H-8083-13B, *Glider Flying Handbook*, 2024, pages 4-10 and 4-11; the exact forms
/// are derived here from the standard atmosphere (ICAO Doc 7488/3, 1993, from memory). The cold-air
/// rule of 4 % for each 10 K and the correction are those of ICAO Doc 8168 (PANS-OPS), read as
/// quoted in public copies, not in the document itself.
public final class Altimeter {
    private static final double FLIGHT_LEVEL_STEP = 100 * 0.3048; // (m)
    private static final double COLD_RULE = 0.04 / 10; // (1/K)

    private Altimeter() {}

    /// Answers: how far does one climb until the pressure is one unit lower? dH/dp = R T / (p g).
    ///
    /// Neglects the weather: the air is the standard one.
    ///
    /// @param altitude geopotential altitude (m), −5 000 to 11 000
    /// @return height per pressure (m/Pa), 0.053 to 0.281; 8.3 m for each hectopascal at sea level
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double heightPerPressure(double altitude) {
        return 1 / (StandardAtmosphere.density(altitude) * StandardAtmosphere.GRAVITY);
    }

    /// Answers: which pressure has a field at this altimeter setting? QFE = p(elevation + PA(QNH)).
    ///
    /// Neglects nothing beyond what the altimeter setting itself neglects.
    ///
    /// @param elevation of the field above sea level (m), −5 000 to 11 000
    /// @param qnh altimeter setting (Pa), 22 632 to 177 687
    /// @return pressure at the field (Pa), 22 632 to 177 687
    /// @throws IllegalArgumentException if an input or the field's pressure altitude is outside its
    ///   range
    public static double fieldPressure(double elevation, double qnh) {
        return StandardAtmosphere.pressure(Altitude.pressureAltitudeOfField(elevation, qnh));
    }

    /// Answers: which pressure has a field, by a rule of so many metres for each unit of pressure?
    /// QFE = QNH − elevation / k.
    ///
    /// Neglects that k grows with altitude; at 800 m the rules in use differ by 13 hPa.
    ///
    /// @param elevation of the field above sea level (m), −5 000 to 11 000
    /// @param qnh altimeter setting (Pa), above zero
    /// @param heightPerPressure k of the rule (m/Pa), above zero; 8 m, 27 ft and 30 ft for each
    ///   hectopascal are all common practice
    /// @return pressure at the field by the rule (Pa), above zero
    /// @throws IllegalArgumentException if an input or the answer is outside its range
    public static double fieldPressureByRule(
            double elevation, double qnh, double heightPerPressure) {
        Require.between("elevation (m)", elevation, -5_000, 11_000);
        Require.positive("altimeter setting (Pa)", qnh);
        Require.positive("height per pressure (m/Pa)", heightPerPressure);
        double pressure = qnh - elevation / heightPerPressure;
        Require.positive("pressure (Pa) at the field", pressure);
        return pressure;
    }

    /// Answers: which altimeter setting makes a field of this pressure show its elevation? The
    /// inverse of [#fieldPressure], QNH = p(PA(QFE) − elevation).
    ///
    /// Neglects what [#fieldPressure] neglects.
    ///
    /// @param elevation of the field above sea level (m), −5 000 to 11 000
    /// @param fieldPressure QFE (Pa), 22 632 to 177 687
    /// @return altimeter setting (Pa), 22 632 to 177 687
    /// @throws IllegalArgumentException if an input or the answer is outside its range
    public static double altimeterSetting(double elevation, double fieldPressure) {
        Require.between("elevation (m)", elevation, -5_000, 11_000);
        return StandardAtmosphere.pressure(Altitude.pressureAltitude(fieldPressure) - elevation);
    }

    /// Answers: by how much does an altimeter with a wrong setting show too high? PA(correct) −
    /// PA(set); a setting too high shows too high.
    ///
    /// Neglects that the error changes a little with altitude.
    ///
    /// @param set altimeter setting in the window (Pa), 22 632 to 177 687
    /// @param correct the right one (Pa), 22 632 to 177 687
    /// @return error (m), positive where the altimeter shows too high
    /// @throws IllegalArgumentException if an input is outside its range
    public static double overRead(double set, double correct) {
        return Altitude.pressureAltitude(correct) - Altitude.pressureAltitude(set);
    }

    /// Answers: at which pressure altitude lies a flight level? FL × 100 ft.
    ///
    /// Neglects nothing: it is the definition.
    ///
    /// @param flightLevel zero or above
    /// @return pressure altitude (m), zero or above
    /// @throws IllegalArgumentException if the flight level is below zero
    public static double flightLevel(double flightLevel) {
        Require.notNegative("flight level", flightLevel);
        return flightLevel * FLIGHT_LEVEL_STEP;
    }

    /// Answers: how high above sea level is a flight level at this QNH? FL × 100 ft − PA(QNH).
    ///
    /// Neglects that the air may be warmer or colder than standard.
    ///
    /// @param flightLevel zero or above
    /// @param qnh altimeter setting (Pa), 22 632 to 177 687
    /// @return altitude (m); lower than the level where the QNH is low
    /// @throws IllegalArgumentException if an input is outside its range
    public static double flightLevelAltitude(double flightLevel, double qnh) {
        return flightLevel(flightLevel) - Altitude.pressureAltitude(qnh);
    }

    /// Answers: how high is one really in air colder or warmer than standard, by the rule of 4 %
    /// for each 10 K? h = h_i (1 + 0.004 ΔT).
    ///
    /// Neglects that the share grows in very cold air.
    ///
    /// @param indicatedHeight h_i above the place of the altimeter setting (m), zero or above
    /// @param deviation ΔT from the standard temperature (K), −250 to 250; negative where colder
    /// @return true height above that place (m), zero or above; lower than shown where colder
    /// @throws IllegalArgumentException if an input is outside its range
    public static double trueHeightByRule(double indicatedHeight, double deviation) {
        Require.notNegative("indicated height (m)", indicatedHeight);
        Require.between("deviation (K)", deviation, -250, 250);
        return indicatedHeight * (1 + COLD_RULE * deviation);
    }

    /// Answers: how much must be added to a height that is to be kept, so that the altimeter shows
    /// it in cold air? Δh = h (15 °C − t₀) / (T₀ − L h / 2), with t₀ the temperature at sea level.
    ///
    /// Holds for an altimeter setting from a place at sea level. Subtracted from a height *shown*
    /// it takes away somewhat too much. Neglects inversions.
    ///
    /// @param height to be kept above the place of the altimeter setting (m), 0 to 5 000
    /// @param temperature there, at sea level (K), 150 to 288.15
    /// @return correction (m), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double coldCorrection(double height, double temperature) {
        Require.between("height (m)", height, 0, 5_000);
        Require.between("temperature (K)", temperature, 150, StandardAtmosphere.TEMPERATURE_0);
        double middle = temperature - StandardAtmosphere.LAPSE_RATE * height / 2;
        return height * (StandardAtmosphere.TEMPERATURE_0 - temperature) / middle;
    }
}
