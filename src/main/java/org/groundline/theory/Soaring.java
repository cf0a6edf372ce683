package org.groundline.theory;

/// Rising air: what is left of it, where it carries the glider, and how far it takes one.
///
/// Source: derived here, from speed, time and distance.
public final class Soaring {
    private Soaring() {}

    /// Answers: how fast does one come down in this lift? w − u.
    ///
    /// Neglects that lift differs from place to place. A result below zero is an answer: one still
    /// climbs.
    ///
    /// @param sinkRate w (m/s), above zero, of the wing in the way down it flies
    /// @param updraft u (m/s), of the air, zero or above
    /// @return net sink rate (m/s), positive downwards, negative while climbing
    /// @throws IllegalArgumentException if an input is outside its range
    public static double netSink(double sinkRate, double updraft) {
        Require.positive("sink rate (m/s)", sinkRate);
        Require.notNegative("updraft (m/s)", updraft);
        return sinkRate - updraft;
    }

    /// Answers: how far does the wind carry a glider that circles up? d = W h / m.
    ///
    /// Neglects that the wind changes with height, and that a thermal may drift more slowly than
    /// it.
    ///
    /// @param gain h (m), zero or above
    /// @param climb m (m/s), above zero, as the variometer shows it
    /// @param wind W (m/s), zero or above
    /// @return drift over the ground (m), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double drift(double gain, double climb, double wind) {
        Require.notNegative("gain of height (m)", gain);
        Require.positive("climb (m/s)", climb);
        Require.notNegative("wind (m/s)", wind);
        return wind * gain / climb;
    }

    /// Answers: how far per second on average, climbing and gliding in turn? V m / (m + w).
    ///
    /// Neglects wind, and the time to find the next climb.
    ///
    /// @param airspeed V (m/s), above zero, between the climbs
    /// @param descentRate w (m/s), above zero, at that airspeed, moving air included
    /// @param climb m (m/s), average, above zero
    /// @return cross-country speed (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double crossCountrySpeed(double airspeed, double descentRate, double climb) {
        Require.positive("airspeed (m/s)", airspeed);
        Require.positive("rate of descent (m/s)", descentRate);
        Require.positive("climb (m/s)", climb);
        return airspeed * climb / (climb + descentRate);
    }
}
