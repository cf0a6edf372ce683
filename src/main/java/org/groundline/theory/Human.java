package org.groundline.theory;

/// The pilot: cold, thin air, reaction.
///
/// Sources: wind chill of the Joint Action Group on Temperature Indices, 2001, checked against
/// Environment Canada's chart (archived page of 2006) and a chart of the U.S. National Weather
/// Service's kind; oxygen as the fixed share 20.95 % of the standard pressure; reaction derived
/// here, from distance = speed × time.
public final class Human {
    private static final double OXYGEN = 0.2095;
    private static final double MILE_PER_HOUR = 0.44704; // (m/s)

    private Human() {}

    /// Answers: how cold does this air feel on the face in this wind, by the metric formula? W =
    /// 13.12 + 0.6215 t − 11.37 V^0.16 + 0.3965 t V^0.16, t in °C and V in km/h at 10 m.
    ///
    /// Published for t up to 5 °C and V from 5 km/h. It assumes someone walking and a wind measured
    /// at 10 m: in flight it only gives an idea. Things never cool below the air.
    ///
    /// @param temperature of the air (K), 150 to 350
    /// @param windSpeed V (m/s), above zero, up to 200
    /// @return wind chill temperature (K)
    /// @throws IllegalArgumentException if an input is outside its range
    public static double windChill(double temperature, double windSpeed) {
        requireChill(temperature, windSpeed);
        double celsius = temperature - Humidity.FREEZING;
        double wind = StrictMath.pow(windSpeed * 3.6, 0.16);
        double chill = 13.12 + 0.6215 * celsius - 11.37 * wind + 0.3965 * celsius * wind;
        return chill + Humidity.FREEZING;
    }

    /// Answers: how cold does this air feel on the face in this wind, by the formula in °F and mph?
    /// W = 35.74 + 0.6215 t − 35.75 V^0.16 + 0.4275 t V^0.16.
    ///
    /// The same index as [#windChill] but for the rounding of its coefficients.
    ///
    /// @param temperature of the air (K), 150 to 350
    /// @param windSpeed V (m/s), above zero, up to 200
    /// @return wind chill temperature (K)
    /// @throws IllegalArgumentException if an input is outside its range
    public static double windChillUs(double temperature, double windSpeed) {
        requireChill(temperature, windSpeed);
        double fahrenheit = (temperature - Humidity.FREEZING) * 9 / 5 + 32;
        double wind = StrictMath.pow(windSpeed / MILE_PER_HOUR, 0.16);
        double chill = 35.74 + 0.6215 * fahrenheit - 35.75 * wind + 0.4275 * fahrenheit * wind;
        return (chill - 32) * 5 / 9 + Humidity.FREEZING;
    }

    /// Answers: which pressure has the oxygen of the air at this altitude? 0.2095 p.
    ///
    /// Neglects humidity. The share is the same at all flying heights; the pressure falls.
    ///
    /// @param altitude geopotential altitude (m), −5 000 to 11 000
    /// @return partial pressure of oxygen (Pa)
    /// @throws IllegalArgumentException if the altitude is outside that range
    public static double oxygenPressure(double altitude) {
        return OXYGEN * StandardAtmosphere.pressure(altitude);
    }

    /// Answers: how far does one fly before anything is done? d = V t.
    ///
    /// Neglects what the glider does meanwhile.
    ///
    /// @param speed V (m/s), zero or above
    /// @param time t (s), zero or above
    /// @return distance (m), zero or above
    /// @throws IllegalArgumentException if an input is below zero
    public static double reactionDistance(double speed, double time) {
        Require.notNegative("speed (m/s)", speed);
        Require.notNegative("time (s)", time);
        return speed * time;
    }

    /// Answers: how long until two that fly head-on meet? t = d / (V₁ + V₂).
    ///
    /// Neglects that either turns away, as both must, to the right.
    ///
    /// @param distance d between them (m), zero or above
    /// @param speed V₁ (m/s), above zero
    /// @param otherSpeed V₂ (m/s), above zero
    /// @return time (s), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double closingTime(double distance, double speed, double otherSpeed) {
        Require.notNegative("distance (m)", distance);
        Require.positive("speed (m/s)", speed);
        Require.positive("other speed (m/s)", otherSpeed);
        return distance / (speed + otherSpeed);
    }

    private static void requireChill(double temperature, double windSpeed) {
        Require.between("temperature (K)", temperature, 150, 350);
        Require.positive("wind speed (m/s)", windSpeed);
        Require.between("wind speed (m/s)", windSpeed, 0, 200);
    }
}
