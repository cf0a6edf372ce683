package org.groundline.theory;

/// The steady turn flown at the angle of attack of a straight flight, told in the airspeed and the
/// sink rate of that straight flight: brakes or bar as they were, the wing flies faster in the
/// turn.
///
/// The other case, an airspeed that is held in the turn, is [Turn]; a sink rate at that airspeed
/// takes a polar: [Polar#sinkRateInTurn].
///
/// Source: derived here, from lift and drag growing with the square of the airspeed and the load
/// factor 1 / cos φ (FAA-H-8083-13B, *Glider Flying Handbook*, 2024, page 3-12).
public final class SameAngleTurn {
    private SameAngleTurn() {}

    /// Answers: how fast does the wing fly in the turn? V √n = V / √(cos φ).
    ///
    /// Neglects the descent, and the wing's change of shape under load.
    ///
    /// @param straightSpeed V (m/s), true, above zero, in straight flight
    /// @param bank φ (rad) from the horizon, 0 to below π/2
    /// @return airspeed in the turn (m/s), at least V
    /// @throws IllegalArgumentException if an input is outside its range
    public static double airspeed(double straightSpeed, double bank) {
        Require.positive("airspeed in straight flight (m/s)", straightSpeed);
        return straightSpeed * Math.sqrt(Turn.loadFactor(bank));
    }

    /// Answers: how wide is the circle? R = V² / (g sin φ).
    ///
    /// Neglects the descent, and wind.
    ///
    /// @param straightSpeed V (m/s), true, above zero, in straight flight
    /// @param bank φ (rad) from the horizon, above 0, below π/2
    /// @return radius (m), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double radius(double straightSpeed, double bank) {
        return Turn.radius(airspeed(straightSpeed, bank), bank);
    }

    /// Answers: how long does a full circle take? T = 2 π V / (g tan φ √(cos φ)).
    ///
    /// Neglects the descent.
    ///
    /// @param straightSpeed V (m/s), true, above zero, in straight flight
    /// @param bank φ (rad) from the horizon, above 0, below π/2
    /// @return time (s), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double time(double straightSpeed, double bank) {
        return Turn.time(airspeed(straightSpeed, bank), bank);
    }

    /// Answers: how fast does the wing sink in the turn? w n^1.5 = w / (cos φ)^1.5.
    ///
    /// Neglects the wing's change of shape under load.
    ///
    /// @param straightSink w (m/s), above zero, in straight flight
    /// @param bank φ (rad) from the horizon, 0 to below π/2
    /// @return sink rate in the turn (m/s), at least w
    /// @throws IllegalArgumentException if an input is outside its range
    public static double sinkRate(double straightSink, double bank) {
        Require.positive("sink rate in straight flight (m/s)", straightSink);
        double loadFactor = Turn.loadFactor(bank);
        return straightSink * loadFactor * Math.sqrt(loadFactor);
    }

    /// Answers: how much height does a full circle cost? 2 π V w / (g sin φ cos φ), least at 45°.
    ///
    /// Neglects the wing's change of shape under load, and moving air.
    ///
    /// @param straightSpeed V (m/s), true, above zero, in straight flight
    /// @param straightSink w (m/s), above zero, in straight flight
    /// @param bank φ (rad) from the horizon, above 0, below π/2
    /// @return height (m), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double heightPerTurn(double straightSpeed, double straightSink, double bank) {
        return sinkRate(straightSink, bank) * time(straightSpeed, bank);
    }
}
