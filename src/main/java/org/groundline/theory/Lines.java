package org.groundline.theory;

/// What the lines of a paraglider carry, and what they have to.
///
/// Source: requirements of EN 926-1 as an equipment maker's article gives them (secondary, the
/// standard itself was not read; its edition is not named there). The load on the lines is derived
/// here.
public final class Lines {
    /// The rule names this gravity itself (m/s²); it is not the standard one.
    private static final double GRAVITY_OF_THE_RULE = 9.81;

    private static final double LOAD_FACTOR_OF_THE_RULE = 14;
    private static final double LEAST_STRENGTH = 14_000; // (N)

    private Lines() {}

    /// Answers: which force do all lines together carry at this load factor? F = n m g.
    ///
    /// Neglects that lines never share a load equally, and that the wing carries itself: with the
    /// all-up mass the result is somewhat too high.
    ///
    /// @param mass m (kg), above zero, that hangs on the lines
    /// @param loadFactor n, zero or above
    /// @return force (N), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double load(double mass, double loadFactor) {
        Require.positive("mass (kg)", mass);
        Require.notNegative("load factor", loadFactor);
        return loadFactor * mass * StandardAtmosphere.GRAVITY;
    }

    /// Answers: how strong do all lines of one level have to be together, after bending? The larger
    /// of 14 × 9.81 m/s² × m and 14 000 N.
    ///
    /// Neglects what the standard asks beside it: a least strength of each line, a sustained load
    /// and a shock.
    ///
    /// @param maximumMass m (kg), above zero, the highest all-up mass of the wing
    /// @return force (N), 14 000 or more
    /// @throws IllegalArgumentException if the mass is not above zero
    public static double strengthRequired(double maximumMass) {
        Require.positive("highest all-up mass (kg)", maximumMass);
        return Math.max(
                LOAD_FACTOR_OF_THE_RULE * GRAVITY_OF_THE_RULE * maximumMass, LEAST_STRENGTH);
    }
}
