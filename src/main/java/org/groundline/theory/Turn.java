package org.groundline.theory;

/// The steady turn: no slip, no change of height.
///
/// Source: FAA-H-8083-13B, *Glider Flying Handbook*, 2024, pages 3-12 and 3-13.
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
        if (!(bank >= 0 && bank < Math.PI / 2)) {
            throw Require.refused("bank (rad)", bank, "must be from 0 to below π/2");
        }
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
}
