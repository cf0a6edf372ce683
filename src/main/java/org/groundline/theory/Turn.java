package org.groundline.theory;

/// The steady turn: no slip, no change of height. The airspeed is the one held in the turn; where
/// that of the straight flight before it is known instead, see [SameAngleTurn].
///
/// Source: FAA-H-8083-13B, *Glider Flying Handbook*, 2024, pages 3-12 and 3-13; for stall and load
/// also page 5-8 and the FAA's *Flight Training Handbook* (AC 61-21), load factors and stalling
/// speeds.
public final class Turn {
    private Turn() {}

    /// Answers: how many times its weight does the wing carry at this bank? n = 1 / cos φ.
    ///
    /// Neglects the descent: in a steep spiral the bank of the wing is not the right angle.
    ///
    /// @param bank φ (rad) from the horizon, 0 to below π/2
    /// @return load factor, 1 or more
    /// @throws IllegalArgumentException if the bank is outside that range
    public static double loadFactor(double bank) {
        requireBank(bank);
        return 1 / StrictMath.cos(bank);
    }

    /// Answers: at which airspeed does the wing stall under this load? V = V_s √n.
    ///
    /// Neglects the wing's change of shape under load.
    ///
    /// @param stallSpeed V_s (m/s), above zero, in straight flight
    /// @param loadFactor n, above zero
    /// @return stall speed under load (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double stallSpeed(double stallSpeed, double loadFactor) {
        Require.positive("stall speed (m/s)", stallSpeed);
        Require.positive("load factor", loadFactor);
        return stallSpeed * Math.sqrt(loadFactor);
    }

    /// Answers: at which airspeed does the wing stall at this bank? V = V_s √(1 / cos φ).
    ///
    /// Neglects the wing's change of shape under load.
    ///
    /// @param stallSpeed V_s (m/s), above zero, in straight flight
    /// @param bank φ (rad) from the horizon, 0 to below π/2
    /// @return stall speed at that bank (m/s), at least the one in straight flight
    /// @throws IllegalArgumentException if an input is outside its range
    public static double stallSpeedAtBank(double stallSpeed, double bank) {
        return stallSpeed(stallSpeed, loadFactor(bank));
    }

    /// Answers: at which load does the wing stall at this airspeed? n = (V / V_s)²: it carries no
    /// more.
    ///
    /// Neglects the wing's change of shape under load.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param stallSpeed V_s (m/s), above zero, in straight flight
    /// @return load factor, above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double highestLoadFactor(double airspeed, double stallSpeed) {
        Require.positive("airspeed (m/s)", airspeed);
        Require.positive("stall speed (m/s)", stallSpeed);
        double ratio = airspeed / stallSpeed;
        return ratio * ratio;
    }

    /// Answers: which bank goes with this load? cos φ = 1 / n.
    ///
    /// Neglects the descent.
    ///
    /// @param loadFactor n, 1 or more
    /// @return bank (rad) from the horizon, 0 to below π/2
    /// @throws IllegalArgumentException if the load factor is below 1
    public static double bankAtLoadFactor(double loadFactor) {
        Require.positive("load factor", loadFactor);
        if (loadFactor < 1) {
            throw Require.refused("load factor", loadFactor, "must be 1 or more");
        }
        return StrictMath.acos(1 / loadFactor);
    }

    /// Answers: how wide is the circle flown at this airspeed? R = V² / (g tan φ).
    ///
    /// Neglects the descent, and wind: over the ground the path is no circle.
    ///
    /// @param airspeed V (m/s), true, above zero, held in the turn
    /// @param bank φ (rad) from the horizon, above 0, below π/2
    /// @return radius (m), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double radius(double airspeed, double bank) {
        Require.positive("airspeed (m/s)", airspeed);
        return airspeed * airspeed / inwards(bank);
    }

    /// Answers: how fast does the nose swing round at this airspeed? ω = g tan φ / V.
    ///
    /// Neglects the descent.
    ///
    /// @param airspeed V (m/s), true, above zero, held in the turn
    /// @param bank φ (rad) from the horizon, above 0, below π/2
    /// @return rate of turn (rad/s), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double rate(double airspeed, double bank) {
        Require.positive("airspeed (m/s)", airspeed);
        return inwards(bank) / airspeed;
    }

    /// Answers: how long does a full circle take at this airspeed? T = 2 π V / (g tan φ).
    ///
    /// Neglects the descent.
    ///
    /// @param airspeed V (m/s), true, above zero, held in the turn
    /// @param bank φ (rad) from the horizon, above 0, below π/2
    /// @return time (s), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double time(double airspeed, double bank) {
        return 2 * Math.PI / rate(airspeed, bank);
    }

    /// Answers: which bank flies this circle at this airspeed? tan φ = V² / (g R).
    ///
    /// Neglects the descent, and wind.
    ///
    /// @param airspeed V (m/s), true, above zero, held in the turn
    /// @param radius R (m), above zero
    /// @return bank (rad) from the horizon, above 0, to π/2
    /// @throws IllegalArgumentException if an input is not above zero
    public static double bankForRadius(double airspeed, double radius) {
        Require.positive("airspeed (m/s)", airspeed);
        Require.positive("radius (m)", radius);
        return StrictMath.atan(airspeed * airspeed / (StandardAtmosphere.GRAVITY * radius));
    }

    /// Answers: which pull in times of their weight do pilots feel in a steady spiral dive? n = √(1
    /// + (V_h² / (R g))²).
    ///
    /// Radius and speed are the pilot's own, not the wing's. Neglects the pilot's own drag. The
    /// bank of the wing is not the angle to put into 1 / cos φ here, as the path is steep. Derived
    /// here.
    ///
    /// @param horizontalSpeed V_h (m/s), zero or above
    /// @param radius R (m), above zero
    /// @return load factor, 1 or more
    /// @throws IllegalArgumentException if an input is outside its range
    public static double spiralLoadFactor(double horizontalSpeed, double radius) {
        Require.notNegative("horizontal speed (m/s)", horizontalSpeed);
        Require.positive("radius (m)", radius);
        double outwards = horizontalSpeed * horizontalSpeed / (radius * StandardAtmosphere.GRAVITY);
        return Math.sqrt(1 + outwards * outwards);
    }

    /// The acceleration towards the middle of the circle, g tan φ (m/s²).
    private static double inwards(double bank) {
        requireBank(bank);
        Require.positive("bank (rad)", bank);
        return StandardAtmosphere.GRAVITY * StrictMath.tan(bank);
    }

    private static void requireBank(double bank) {
        if (!(bank >= 0 && bank < Math.PI / 2)) {
            throw Require.refused("bank (rad)", bank, "must be from 0 to below π/2");
        }
    }
}
