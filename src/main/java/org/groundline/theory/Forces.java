package org.groundline.theory;

/// The forces on a wing, and what they say about it.
///
/// Areas are flat or projected; a coefficient belongs to the kind that it was computed with.
///
/// Sources: the balance of forces in a glide, NASA Glenn Research Center, *Vector Balance of Forces
/// for a Glider* (web page "glidvec"), and FAA-H-8083-13B, *Glider Flying Handbook*, 2024, page
/// 3-5. Coefficients, angles and Bernoulli's equation: textbook definitions, from memory.
public final class Forces {
    private Forces() {}

    /// Answers: how heavy is this mass? G = m g.
    ///
    /// Neglects that gravity differs by up to 0.3 % with latitude.
    ///
    /// @param mass m (kg), above zero
    /// @return weight (N), above zero
    /// @throws IllegalArgumentException if the mass is not above zero
    public static double weight(double mass) {
        Require.positive("mass (kg)", mass);
        return mass * StandardAtmosphere.GRAVITY;
    }

    /// Answers: how much lift carries a steady glide? L = m g cos γ, a little less than the weight.
    ///
    /// Neglects wind that is not steady. The glide ratio is that through the air, L / D.
    ///
    /// @param mass all-up mass m (kg), above zero
    /// @param ratio glide ratio in still air, above zero
    /// @return lift (N), above zero, below the weight
    /// @throws IllegalArgumentException if an input is not above zero
    public static double liftInGlide(double mass, double ratio) {
        return weight(mass) * StrictMath.cos(Glide.angle(ratio));
    }

    /// Answers: how much drag brakes a steady glide? D = m g sin γ, which is also the part of the
    /// weight along the path that pulls forward.
    ///
    /// Neglects wind that is not steady. The glide ratio is that through the air, L / D.
    ///
    /// @param mass all-up mass m (kg), above zero
    /// @param ratio glide ratio in still air, above zero
    /// @return drag (N), above zero, below the weight
    /// @throws IllegalArgumentException if an input is not above zero
    public static double dragInGlide(double mass, double ratio) {
        return weight(mass) * StrictMath.sin(Glide.angle(ratio));
    }

    /// Answers: how large is the lift or the drag with this coefficient? F = ρ V² S C / 2.
    ///
    /// Neglects that coefficients change a little with speed and size.
    ///
    /// @param coefficient C_L for lift, C_D for drag, above zero, on that area
    /// @param area S (m²), above zero
    /// @param airspeed V (m/s), true, above zero
    /// @param density ρ (kg/m³), above zero
    /// @return force (N), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double force(double coefficient, double area, double airspeed, double density) {
        Require.positive("coefficient", coefficient);
        return coefficient * forceAtOne(area, airspeed, density);
    }

    /// Answers: which coefficient makes this lift or drag? C = 2 F / (ρ V² S).
    ///
    /// Neglects nothing: it is the definition.
    ///
    /// @param force lift or drag F (N), above zero
    /// @param area S (m²), above zero
    /// @param airspeed V (m/s), true, above zero
    /// @param density ρ (kg/m³), above zero
    /// @return lift or drag coefficient, above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double coefficient(double force, double area, double airspeed, double density) {
        Require.positive("force (N)", force);
        return force / forceAtOne(area, airspeed, density);
    }

    /// Answers: how many metres forward for one down does this lift and drag make? GR = L / D.
    ///
    /// Neglects nothing in a steady glide. Two coefficients on one area do as well as two forces.
    ///
    /// @param lift L (N), above zero
    /// @param drag D (N), above zero
    /// @return glide ratio in still air, above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double ratio(double lift, double drag) {
        Require.positive("lift (N)", lift);
        Require.positive("drag (N)", drag);
        return lift / drag;
    }

    /// Answers: at which angle does the air meet the chord? α = θ + γ.
    ///
    /// Neglects a bank, and moving air.
    ///
    /// @param attitude θ (rad) of the chord from the horizon, nose-up positive, −π/2 to π/2
    /// @param glideAngle γ (rad) of the path, positive below the horizon, −π/2 to π/2
    /// @return angle of attack (rad), −π to π
    /// @throws IllegalArgumentException if an input is outside its range
    public static double angleOfAttack(double attitude, double glideAngle) {
        Require.between("attitude (rad)", attitude, -Math.PI / 2, Math.PI / 2);
        Require.between("glide angle (rad)", glideAngle, -Math.PI / 2, Math.PI / 2);
        return attitude + glideAngle;
    }

    /// Answers: how does the chord lie to the horizon in a glide? θ = α − γ.
    ///
    /// Neglects a bank, and moving air.
    ///
    /// @param angleOfAttack α (rad) between chord and airflow, −π/2 to π/2
    /// @param glideAngle γ (rad) of the path, positive below the horizon, −π/2 to π/2
    /// @return attitude (rad), nose-up positive, −π to π
    /// @throws IllegalArgumentException if an input is outside its range
    public static double attitude(double angleOfAttack, double glideAngle) {
        Require.between("angle of attack (rad)", angleOfAttack, -Math.PI / 2, Math.PI / 2);
        Require.between("glide angle (rad)", glideAngle, -Math.PI / 2, Math.PI / 2);
        return angleOfAttack - glideAngle;
    }

    /// Answers: what is the pressure where the same air flows faster or slower? p₂ = p₁ + ρ (v₁² −
    /// v₂²) / 2, Bernoulli's equation.
    ///
    /// Holds along a streamline in steady flow to which nothing adds energy. Neglects height, and
    /// compressibility, which is worth less than 1 % of the difference up to 60 m/s. It does not
    /// say why the air is faster: it does not have to meet its neighbour at the trailing edge.
    ///
    /// @param pressure p₁ (Pa), above zero, where the speed is v₁
    /// @param density ρ (kg/m³), above zero
    /// @param speed v₁ (m/s), zero or above
    /// @param newSpeed v₂ (m/s), zero or above; at zero the air is brought to rest
    /// @return static pressure (Pa), above zero
    /// @throws IllegalArgumentException if an input is outside its range, or the new speed so high
    ///   that no pressure would be left
    public static double pressureAtSpeed(
            double pressure, double density, double speed, double newSpeed) {
        Require.positive("pressure (Pa)", pressure);
        Require.positive("density (kg/m³)", density);
        Require.notNegative("speed (m/s)", speed);
        Require.notNegative("new speed (m/s)", newSpeed);
        double result = pressure + density * (speed - newSpeed) * (speed + newSpeed) / 2;
        if (result <= 0) {
            throw Require.refused(
                    "new speed (m/s)", newSpeed, "must leave some of the pressure " + pressure);
        }
        return result;
    }

    private static double forceAtOne(double area, double airspeed, double density) {
        Require.positive("area (m²)", area);
        Require.positive("airspeed (m/s)", airspeed);
        Require.positive("density (kg/m³)", density);
        return density * airspeed * airspeed / 2 * area;
    }
}
