package org.groundline.theory;

/// The wind gradient: how the wind grows with height above the ground.
///
/// Sources: logarithmic law and power law, from memory; both are checked against published test
/// values of a wind-power library. Roughness lengths and exponents (1/7 over open flat ground, 0.2
/// to 0.3 over rough) are common practice, no source.
public final class WindProfile {
    private WindProfile() {}

    /// Answers: how strong is the wind at another height, by the logarithmic law? v = v_r ln(z /
    /// z₀) / ln(z_r / z₀).
    ///
    /// Neglects stability, slopes and obstacles; holds in the lowest 100 m or so.
    ///
    /// @param windSpeed v_r (m/s), zero or above, at the reference height
    /// @param referenceHeight z_r (m) above the ground, at least 1.1 times the roughness length
    /// @param height z (m) above the ground, at least the roughness length
    /// @param roughness z₀ (m), above zero
    /// @return wind speed there (m/s), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double logarithmic(
            double windSpeed, double referenceHeight, double height, double roughness) {
        Require.notNegative("wind speed (m/s)", windSpeed);
        Require.positive("roughness length (m)", roughness);
        requireAbove("reference height (m)", referenceHeight, 1.1 * roughness);
        requireAbove("height (m)", height, roughness);
        return windSpeed
                * StrictMath.log(height / roughness)
                / StrictMath.log(referenceHeight / roughness);
    }

    /// Answers: how strong is the wind at another height, by the power law? v = v_r (z / z_r)^α.
    ///
    /// Neglects stability, slopes and obstacles.
    ///
    /// @param windSpeed v_r (m/s), zero or above, at the reference height
    /// @param referenceHeight z_r (m) above the ground, above zero
    /// @param height z (m) above the ground, above zero
    /// @param exponent α, 0 to 1
    /// @return wind speed there (m/s), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double power(
            double windSpeed, double referenceHeight, double height, double exponent) {
        Require.notNegative("wind speed (m/s)", windSpeed);
        Require.positive("reference height (m)", referenceHeight);
        Require.positive("height (m)", height);
        Require.between("exponent", exponent, 0, 1);
        return windSpeed * StrictMath.pow(height / referenceHeight, exponent);
    }

    /// Answers: how much airspeed above the stall is left at worst after sinking into the wind
    /// through a gradient? V − (W₁ − W₂) − V_s.
    ///
    /// The worst case: the glider keeps its ground speed, so that all the lost wind is lost
    /// airspeed. Derived here. Neglects the height that regains speed.
    ///
    /// @param airspeed V (m/s), above zero, before
    /// @param windAbove W₁ (m/s), headwind before
    /// @param windBelow W₂ (m/s), headwind after
    /// @param stallSpeed V_s (m/s), above zero
    /// @return margin (m/s); at zero or below it stalls
    /// @throws IllegalArgumentException if an input is outside its range
    public static double airspeedMargin(
            double airspeed, double windAbove, double windBelow, double stallSpeed) {
        Require.positive("airspeed (m/s)", airspeed);
        Require.finite("headwind above (m/s)", windAbove);
        Require.finite("headwind below (m/s)", windBelow);
        Require.positive("stall speed (m/s)", stallSpeed);
        return airspeed - (windAbove - windBelow) - stallSpeed;
    }

    private static void requireAbove(String quantity, double height, double lowest) {
        Require.positive(quantity, height);
        if (height < lowest) {
            throw Require.refused(quantity, height, "must be at least " + lowest);
        }
    }
}
