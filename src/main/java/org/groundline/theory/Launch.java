package org.groundline.theory;

/// Getting into the air: on foot and on the line.
///
/// Source: derived here, from the change of airspeed with density, and from the forces on a glider
/// that is pulled.
public final class Launch {
    private Launch() {}

    /// Answers: how fast does one have to run? v = V √(ρ₀ / ρ) − W.
    ///
    /// Neglects the slope, gusts, and the wind's gradient between ankle and wing.
    ///
    /// @param takeOffSpeed V (m/s), above zero, the airspeed that lifts off at sea level
    /// @param density ρ (kg/m³), above zero, of the air at take-off
    /// @param headwind W (m/s), below the take-off speed in that air; negative for a tailwind
    /// @return running speed over the ground (m/s), above zero
    /// @throws IllegalArgumentException if an input is outside its range: in a stronger wind the
    ///   wing flies backwards
    public static double runSpeed(double takeOffSpeed, double density, double headwind) {
        double airspeed =
                Loading.speedInAir(takeOffSpeed, StandardAtmosphere.SEA_LEVEL_DENSITY, density);
        return Glide.groundSpeed(airspeed, headwind);
    }

    /// Answers: how much speed is left against the strongest gust? V − G.
    ///
    /// Neglects that wind and gusts grow with height. A small result is no permission: common
    /// practice, no source, keeps far away from it.
    ///
    /// @param airspeed V (m/s), above zero, hands up and without the bar
    /// @param gust G (m/s), zero or above, below the airspeed
    /// @return ground speed in the gust (m/s), above zero
    /// @throws IllegalArgumentException if an input is outside its range: a gust as strong as the
    ///   airspeed stops the glider or blows it back
    public static double penetration(double airspeed, double gust) {
        Require.positive("airspeed (m/s)", airspeed);
        Require.notNegative("gust (m/s)", gust);
        Require.below("gust (m/s)", gust, "the airspeed", airspeed);
        return airspeed - gust;
    }

    /// Answers: how many times its weight does the wing carry on the tow line? n = 1 + T sin β / (m
    /// g).
    ///
    /// Neglects the small difference between lift and weight in a steady flight path, and
    /// everything that is not steady. The stall speed grows with √n: [Turn#stallSpeed].
    ///
    /// @param allUpMass m (kg), above zero
    /// @param pull T (N), zero or above, of the line at the pilot
    /// @param lineAngle β (rad) of the line below the horizon, 0 to π/2
    /// @return load factor, 1 or more
    /// @throws IllegalArgumentException if an input is outside its range
    public static double towLoadFactor(double allUpMass, double pull, double lineAngle) {
        Require.positive("all-up mass (kg)", allUpMass);
        Require.notNegative("pull (N)", pull);
        Require.between("angle of the line (rad)", lineAngle, 0, Math.PI / 2);
        return 1 + pull * StrictMath.sin(lineAngle) / (allUpMass * StandardAtmosphere.GRAVITY);
    }
}
