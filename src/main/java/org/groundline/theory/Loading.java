package org.groundline.theory;

/// Mass, area and what they do to the speeds.
///
/// Source: FAA-H-8083-13B, *Glider Flying Handbook*, 2024, pages 3-7 (aspect ratio) and 5-8 (weight
/// and speed). Speed with density and area is derived here, from the same lift at the same angle of
/// attack.
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

    /// Answers: how much weight does a square metre of wing carry? m g / S. So large, too, is the
    /// mean difference of pressure between the wing's two sides.
    ///
    /// Neglects that the lift in a glide is a little less than the weight, and the kind of area.
    ///
    /// @param allUpMass m (kg), above zero
    /// @param area S (m²), above zero
    /// @return weight by area (N/m², which is Pa), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double weightByArea(double allUpMass, double area) {
        return wingLoading(allUpMass, area) * StandardAtmosphere.GRAVITY;
    }

    /// Answers: how slender is a wing of this span and area? AR = b² / S.
    ///
    /// Neglects the kind of area: span and area are both flat or both projected.
    ///
    /// @param span b (m), above zero
    /// @param area S (m²), above zero
    /// @return aspect ratio, above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double aspectRatio(double span, double area) {
        Require.positive("span (m)", span);
        Require.positive("area (m²)", area);
        return span * span / area;
    }

    /// Answers: how slender is a wing of this span and mean chord? AR = b / c.
    ///
    /// Neglects the kind of span: span and chord are both flat or both projected.
    ///
    /// @param span b (m), above zero
    /// @param meanChord c (m), above zero: area over span
    /// @return aspect ratio, above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double aspectRatioByChord(double span, double meanChord) {
        Require.positive("span (m)", span);
        Require.positive("mean chord (m)", meanChord);
        return span / meanChord;
    }

    /// Answers: how fast is it at another mass by the rule that one tenth more mass makes one
    /// twentieth more speed? v₂ = v₁ (1 + (m₂ / m₁ − 1) / 2).
    ///
    /// Common practice, no source. It is the tangent of the root in [#speedAtMass] at the old mass,
    /// and lies above it elsewhere: by 2 % for half as much mass again.
    ///
    /// @param speed v₁ (m/s), above zero, at `mass`
    /// @param mass m₁ (kg), above zero
    /// @param newMass m₂ (kg), above zero
    /// @return speed at the new mass (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double speedAtMassByRule(double speed, double mass, double newMass) {
        Require.positive("speed (m/s)", speed);
        Require.positive("mass (kg)", mass);
        Require.positive("new mass (kg)", newMass);
        return speed * (1 + newMass / mass) / 2;
    }

    /// Answers: how fast is a wing of the same kind and another size? v₂ = v₁ √(S₁ / S₂).
    ///
    /// Holds for each speed at a fixed angle of attack, at the same mass, and for sink rates.
    /// Neglects what size itself does to a wing.
    ///
    /// @param speed v₁ (m/s), above zero, with `area`
    /// @param area S₁ (m²), above zero
    /// @param newArea S₂ (m²), above zero
    /// @return speed with the new area (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double speedAtArea(double speed, double area, double newArea) {
        Require.positive("speed (m/s)", speed);
        Require.positive("area (m²)", area);
        Require.positive("new area (m²)", newArea);
        return speed * Math.sqrt(area / newArea);
    }
}
