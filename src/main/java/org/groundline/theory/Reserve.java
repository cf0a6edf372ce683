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

    /// Answers: how large a canopy brings one down at this rate? S = 2 m g / (ρ C_D v²).
    ///
    /// Neglects what [#sinkRate] neglects.
    ///
    /// @param mass all-up mass m (kg), above zero
    /// @param sinkRate v (m/s), above zero
    /// @param dragCoefficient C_D on that area, above zero
    /// @param density ρ (kg/m³), above zero
    /// @return area (m²), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double areaNeeded(
            double mass, double sinkRate, double dragCoefficient, double density) {
        Require.positive("drag coefficient", dragCoefficient);
        return dragAreaNeeded(mass, sinkRate, density) / dragCoefficient;
    }

    /// Answers: which drag coefficient does a measured descent show? C_D = 2 m g / (ρ S v²).
    ///
    /// Neglects what [#sinkRate] neglects.
    ///
    /// @param mass all-up mass m (kg), above zero
    /// @param sinkRate v (m/s), above zero
    /// @param area S (m²), above zero, as the maker gives it
    /// @param density ρ (kg/m³), above zero
    /// @return drag coefficient on that area, above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double dragCoefficient(
            double mass, double sinkRate, double area, double density) {
        Require.positive("area (m²)", area);
        return dragAreaNeeded(mass, sinkRate, density) / area;
    }

    /// Answers: how fast does one land after falling from this height? v = √(2 g h).
    ///
    /// Neglects the air during the fall.
    ///
    /// @param height h (m), zero or above
    /// @return speed (m/s), zero or above
    /// @throws IllegalArgumentException if the height is below zero
    public static double speedAfterFall(double height) {
        Require.notNegative("height (m)", height);
        return Math.sqrt(2 * StandardAtmosphere.GRAVITY * height);
    }

    /// Answers: how much height is gone until the canopy is open? h = v (t₁ + t₂ + t₃).
    ///
    /// All three times are assumptions. Neglects that the sink grows while one waits, and that the
    /// opening slows it. Never a safe minimum: low means throw now.
    ///
    /// @param sinkRate v (m/s), above zero, before the canopy carries
    /// @param decisionTime t₁ (s), zero or above
    /// @param throwTime t₂ (s), zero or above
    /// @param openingTime t₃ (s), zero or above
    /// @return height (m), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double heightUsed(
            double sinkRate, double decisionTime, double throwTime, double openingTime) {
        Require.positive("sink rate (m/s)", sinkRate);
        Require.notNegative("time to decide (s)", decisionTime);
        Require.notNegative("time to throw (s)", throwTime);
        Require.notNegative("time to open (s)", openingTime);
        return sinkRate * (decisionTime + throwTime + openingTime);
    }

    /// Answers: how much height is gone, where the opening is told as a loss of height? h = v t +
    /// h₀.
    ///
    /// Time and loss are assumptions. Never a safe minimum: low means throw now.
    ///
    /// @param sinkRate v (m/s), above zero, before the throw
    /// @param decisionTime t (s), zero or above
    /// @param openingLoss h₀ (m), zero or above
    /// @return height (m), at least the loss of the opening
    /// @throws IllegalArgumentException if an input is outside its range
    public static double heightUsedWithLoss(
            double sinkRate, double decisionTime, double openingLoss) {
        Require.positive("sink rate (m/s)", sinkRate);
        Require.notNegative("time to decide (s)", decisionTime);
        Require.notNegative("loss of the opening (m)", openingLoss);
        return sinkRate * decisionTime + openingLoss;
    }

    /// S C_D (m²), the area of a canopy with a drag coefficient of one.
    private static double dragAreaNeeded(double mass, double sinkRate, double density) {
        Require.positive("all-up mass (kg)", mass);
        Require.positive("sink rate (m/s)", sinkRate);
        Require.positive("density (kg/m³)", density);
        double weight = mass * StandardAtmosphere.GRAVITY;
        return 2 * weight / (density * sinkRate * sinkRate);
    }
}
