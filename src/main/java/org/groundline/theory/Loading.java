package org.groundline.theory;

/// Mass, area and what they do to the speeds.
///
/// Source: FAA-H-8083-13B, *Glider Flying Handbook*, 2024, chapter 5 (weight and speed).
public final class Loading {
    private Loading() {}

    /// Answers: what does everything that takes off weigh together? The sum of all parts.
    ///
    /// Neglects nothing; forgetting a part is the usual mistake.
    ///
    /// @param pilot the pilot, dressed (kg), above zero
    /// @param wing the wing (kg), zero or above
    /// @param harness harness and reserve (kg), zero or above
    /// @param equipment instruments, water, bag (kg), zero or above
    /// @return all-up mass (kg), above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double allUpMass(double pilot, double wing, double harness, double equipment) {
        Require.positive("mass of the pilot (kg)", pilot);
        Require.notNegative("mass of the wing (kg)", wing);
        Require.notNegative("mass of the harness (kg)", harness);
        Require.notNegative("mass of the equipment (kg)", equipment);
        return pilot + wing + harness + equipment;
    }

    /// Answers: how much mass does a square metre of wing carry? m / S.
    ///
    /// Neglects the kind of area: flat and projected area give different figures.
    ///
    /// @param allUpMass m (kg), above zero
    /// @param area S (m²), above zero
    /// @return wing loading (kg/m²), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double wingLoading(double allUpMass, double area) {
        Require.positive("all-up mass (kg)", allUpMass);
        Require.positive("area (m²)", area);
        return allUpMass / area;
    }

    /// Answers: how fast is the same wing at another mass? v₂ = v₁ √(m₂ / m₁).
    ///
    /// Holds for each speed at a fixed angle of attack (stall, trim, sink rate). Neglects the
    /// wing's change of shape with load.
    ///
    /// @param speed v₁ (m/s), above zero, at `mass`
    /// @param mass m₁ (kg), above zero
    /// @param newMass m₂ (kg), above zero
    /// @return speed at the new mass (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double speedAtMass(double speed, double mass, double newMass) {
        Require.positive("speed (m/s)", speed);
        Require.positive("mass (kg)", mass);
        Require.positive("new mass (kg)", newMass);
        return speed * Math.sqrt(newMass / mass);
    }

    /// Answers: how fast is the same wing in thinner air? v₂ = v₁ √(ρ₁ / ρ₂).
    ///
    /// Holds for each true airspeed at a fixed angle of attack, and for sink rates.
    ///
    /// @param speed v₁ (m/s), above zero, in air of `density`
    /// @param density ρ₁ (kg/m³), above zero
    /// @param newDensity ρ₂ (kg/m³), above zero
    /// @return speed in the other air (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double speedInAir(double speed, double density, double newDensity) {
        Require.positive("speed (m/s)", speed);
        Require.positive("density (kg/m³)", density);
        Require.positive("new density (kg/m³)", newDensity);
        return speed * Math.sqrt(density / newDensity);
    }
}
