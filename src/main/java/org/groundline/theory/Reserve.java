package org.groundline.theory;

/// The descent under a reserve parachute, and the landing.
///
/// The drag coefficient is that of the whole canopy and refers to the area given with it; figures
/// of different makes are only comparable when both belong together.
///
/// Source: derived here, from the equilibrium of weight and drag and from free fall.
public final class Reserve {
    private Reserve() {}

    /// Answers: how fast does one come down? v = √(2 m g / (ρ S C_D)).
    ///
    /// Neglects swinging, the wing still flying along, and moving air.
    ///
    /// @param mass all-up mass m (kg), above zero
    /// @param area S (m²), above zero
    /// @param dragCoefficient C_D on that area, above zero
    /// @param density ρ (kg/m³), above zero
    /// @return sink rate (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double sinkRate(
            double mass, double area, double dragCoefficient, double density) {
        Require.positive("all-up mass (kg)", mass);
        Require.positive("area (m²)", area);
        Require.positive("drag coefficient", dragCoefficient);
        Require.positive("density (kg/m³)", density);
        double weight = mass * StandardAtmosphere.GRAVITY;
        return Math.sqrt(2 * weight / (density * area * dragCoefficient));
    }

    /// Answers: from how high would one jump to land as fast? h = v² / (2 g).
    ///
    /// Neglects the air during the jump.
    ///
    /// @param sinkRate v (m/s), above zero
    /// @return height (m), above zero
    /// @throws IllegalArgumentException if the sink rate is not above zero
    public static double equalJumpHeight(double sinkRate) {
        Require.positive("sink rate (m/s)", sinkRate);
        return sinkRate * sinkRate / (2 * StandardAtmosphere.GRAVITY);
    }

    /// Answers: how much energy does the landing have to take? E = m v² / 2.
    ///
    /// Neglects the drift with the wind.
    ///
    /// @param mass m (kg), above zero
    /// @param sinkRate v (m/s), above zero
    /// @return energy (J), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double impactEnergy(double mass, double sinkRate) {
        Require.positive("mass (kg)", mass);
        Require.positive("sink rate (m/s)", sinkRate);
        return mass * sinkRate * sinkRate / 2;
    }
}
