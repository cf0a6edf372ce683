package org.groundline.theory;

import java.util.List;

/// The Beaufort scale: wind forces and the whole knots that belong to them, as a mean over ten
/// minutes at 10 m above open ground.
///
/// Sources: forces 1 to 8 from a copy of the Met Office's marine table, 9 to 12 from two other
/// public copies of the scale; the mean speed v = 0.836 B^1.5 m/s is that of the World
/// Meteorological Organization, from memory.
public final class Beaufort {
    private static final double KNOT = 1852.0 / 3600; // (m/s)

    /// Where each force begins, from 0 to 12.
    private static final List<Integer> LOWEST_KNOTS =
            List.of(0, 1, 4, 7, 11, 17, 22, 28, 34, 41, 48, 56, 64);

    private static final int HIGHEST = LOWEST_KNOTS.size() - 1;

    private Beaufort() {}

    /// Answers: which force has this wind? That of its nearest whole knots.
    ///
    /// Neglects fractions of a knot: the scale is made for observers.
    ///
    /// @param windSpeed mean (m/s), zero or above
    /// @return force, a whole number from 0 to 12
    /// @throws IllegalArgumentException if the wind is below zero
    public static double force(double windSpeed) {
        Require.notNegative("wind speed (m/s)", windSpeed);
        double knots = Math.rint(windSpeed / KNOT);
        return LOWEST_KNOTS.stream().filter(lowest -> lowest <= knots).count() - 1;
    }

    /// Answers: from which wind on is it this force? The scale's lower edge.
    ///
    /// Neglects nothing: it is the table.
    ///
    /// @param force a whole number from 0 to 12
    /// @return lowest mean wind (m/s), a whole number of knots
    /// @throws IllegalArgumentException if the force is not such a number
    public static double lowest(double force) {
        requireForce(force, HIGHEST);
        return LOWEST_KNOTS.get((int) force) * KNOT;
    }

    /// Answers: up to which wind is it this force? The scale's upper edge.
    ///
    /// Neglects nothing: it is the table; force 12 has no upper edge.
    ///
    /// @param force a whole number from 0 to 11
    /// @return highest mean wind (m/s), a whole number of knots
    /// @throws IllegalArgumentException if the force is not such a number
    public static double highest(double force) {
        requireForce(force, HIGHEST - 1);
        return (LOWEST_KNOTS.get((int) force + 1) - 1) * KNOT;
    }

    /// Answers: which wind stands for this force? v = 0.836 B^1.5 m/s.
    ///
    /// Neglects the scale's width.
    ///
    /// @param force B, 0 to 12
    /// @return mean wind (m/s), 0 to 34.8
    /// @throws IllegalArgumentException if the force is outside that range
    public static double meanSpeed(double force) {
        Require.between("force", force, 0, HIGHEST);
        return 0.836 * force * Math.sqrt(force);
    }

    private static void requireForce(double force, double highest) {
        Require.between("force", force, 0, highest);
        if (force != Math.rint(force)) {
            throw Require.refused("force", force, "must be a whole number");
        }
    }
}
