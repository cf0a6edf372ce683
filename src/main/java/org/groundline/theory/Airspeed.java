package org.groundline.theory;

/// Indicated and true airspeed beside the exact form in the standard atmosphere
/// ([StandardAtmosphere#trueAirspeed]). At these speeds indicated and equivalent airspeed are the
/// same but for the instrument's error. Stall, trim and best glide happen at the same indicated
/// airspeed at every height.
///
/// Source of the rule: FAA-H-8083-13B, *Glider Flying Handbook*, 2024, page 4-5, figure 4-8. The
/// exact forms are derived here, from equal dynamic pressure.
public final class Airspeed {
    private static final double RULE_STEP = 1_000 * 0.3048; // (m)

    private Airspeed() {}

    /// Answers: which airspeed is indicated at this true airspeed? V_E = V √(ρ / ρ₀).
    ///
    /// Neglects the instrument's error and compressibility.
    ///
    /// @param trueAirspeed V (m/s), above zero
    /// @param altitude geopotential altitude (m), −5 000 to 11 000
    /// @return equivalent airspeed (m/s), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double equivalentAirspeed(double trueAirspeed, double altitude) {
        Require.positive("true airspeed (m/s)", trueAirspeed);
        return trueAirspeed * Math.sqrt(StandardAtmosphere.densityRatio(altitude));
    }

    /// Answers: how fast through air of this density is this indicated airspeed? V = V_E √(ρ₀ / ρ).
    ///
    /// Neglects the instrument's error and compressibility.
    ///
    /// @param equivalentAirspeed V_E (m/s), above zero
    /// @param density ρ (kg/m³), above zero
    /// @return true airspeed (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double trueAirspeedInAir(double equivalentAirspeed, double density) {
        Require.positive("equivalent airspeed (m/s)", equivalentAirspeed);
        Require.positive("density (kg/m³)", density);
        return equivalentAirspeed * Math.sqrt(StandardAtmosphere.SEA_LEVEL_DENSITY / density);
    }

    /// Answers: what is the true airspeed by the rule of 2 % for each 1000 ft? V = V_I (1 + 0.02 H
    /// / 1000 ft).
    ///
    /// Neglects that the exact growth is 1.5 % low down and more higher up; at 10 000 ft the rule
    /// gives 3 % too much.
    ///
    /// @param indicatedAirspeed V_I (m/s), above zero
    /// @param altitude H (m), 0 to 11 000
    /// @return true airspeed by the rule (m/s), at least the indicated one
    /// @throws IllegalArgumentException if an input is outside its range
    public static double trueAirspeedByRule(double indicatedAirspeed, double altitude) {
        Require.positive("indicated airspeed (m/s)", indicatedAirspeed);
        Require.between("altitude (m)", altitude, 0, 11_000);
        return indicatedAirspeed * (1 + 0.02 * altitude / RULE_STEP);
    }
}
