package org.groundline.theory;

/// Gusts, and the force of the wind.
///
/// Sources: half the gust on top of the approach speed after FAA-H-8083-13B, *Glider Flying
/// Handbook*, 2024, page 3-15, a rule for sailplanes; the rest derived here, from q = ½ ρ v².
public final class Gust {
    private Gust() {}

    /// Answers: how many times the mean wind is the gust? Gust / mean.
    ///
    /// Neglects how long and how often it gusts.
    ///
    /// @param mean wind (m/s), above zero
    /// @param gust (m/s), at least the mean
    /// @return gust factor, 1 or more
    /// @throws IllegalArgumentException if an input is outside its range
    public static double factor(double mean, double gust) {
        Require.positive("mean wind (m/s)", mean);
        requireGust(mean, gust);
        return gust / mean;
    }

    /// Answers: how much faster does a sailplane approach in gusts? (gust − mean) / 2.
    ///
    /// Neglects all else that calls for more speed. A rule for sailplanes, not for free flight.
    ///
    /// @param mean wind (m/s), zero or above
    /// @param gust (m/s), at least the mean
    /// @return addition to the approach speed (m/s), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double sailplaneAddition(double mean, double gust) {
        Require.notNegative("mean wind (m/s)", mean);
        requireGust(mean, gust);
        return (gust - mean) / 2;
    }

    /// Answers: which pressure does air of this speed bring up against what stops it? q = ½ ρ v².
    ///
    /// Neglects compressibility.
    ///
    /// @param speed v (m/s), zero or above
    /// @param density ρ (kg/m³), above zero
    /// @return dynamic pressure (Pa), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double dynamicPressure(double speed, double density) {
        Require.notNegative("speed (m/s)", speed);
        Require.positive("density (kg/m³)", density);
        return density * speed * speed / 2;
    }

    /// Answers: how many times as hard does another wind pull? (v₂ / v₁)².
    ///
    /// Neglects that the wing changes its shape and angle.
    ///
    /// @param wind v₁ (m/s), above zero
    /// @param newWind v₂ (m/s), zero or above
    /// @return ratio of the forces, zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double forceRatio(double wind, double newWind) {
        Require.positive("wind (m/s)", wind);
        Require.notNegative("new wind (m/s)", newWind);
        double ratio = newWind / wind;
        return ratio * ratio;
    }

    private static void requireGust(double mean, double gust) {
        Require.notNegative("gust (m/s)", gust);
        if (gust < mean) {
            throw Require.refused("gust (m/s)", gust, "must be at least the mean wind " + mean);
        }
    }
}
