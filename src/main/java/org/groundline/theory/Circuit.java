package org.groundline.theory;

/// A landing circuit of three straight legs in a steady wind: downwind, base across it, final
/// against it.
///
/// Source: derived here, from the wind triangle of each leg.
///
/// @param downwindLeg (m) over the ground, zero or above
/// @param baseLeg (m) over the ground, zero or above
/// @param finalLeg (m) over the ground, zero or above
public record Circuit(double downwindLeg, double baseLeg, double finalLeg) {
    /// @throws IllegalArgumentException if a leg is below zero
    public Circuit {
        Require.notNegative("downwind leg (m)", downwindLeg);
        Require.notNegative("base leg (m)", baseLeg);
        Require.notNegative("final leg (m)", finalLeg);
    }

    /// Answers: how much height does the circuit use? The sum of leg × w / V_g, with V_g = V + W
    /// downwind, √(V² − W²) across and V − W on final.
    ///
    /// Neglects the turns, which sink faster, the wind's gradient, and flare.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param wind W (m/s), zero or above, below the airspeed
    /// @param sinkRate w (m/s), above zero
    /// @return height (m), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public double heightUsed(double airspeed, double wind, double sinkRate) {
        Require.notNegative("wind (m/s)", wind);
        double against = Glide.groundSpeed(airspeed, wind);
        double with = Glide.groundSpeed(airspeed, -wind);
        double across = Math.sqrt(against * with);
        return Glide.heightNeeded(downwindLeg, with, sinkRate, 0)
                + Glide.heightNeeded(baseLeg, across, sinkRate, 0)
                + Glide.heightNeeded(finalLeg, against, sinkRate, 0);
    }

    /// Answers: how many times the energy of a landing into wind has one with it? ((V + W) / (V −
    /// W))².
    ///
    /// Neglects flare and gradient, which help into wind and not with it.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param wind W (m/s), zero or above, below the airspeed
    /// @return ratio of the two energies, 1 or more
    /// @throws IllegalArgumentException if an input is outside its range
    public static double downwindEnergyRatio(double airspeed, double wind) {
        Require.notNegative("wind (m/s)", wind);
        double speedRatio = Glide.groundSpeed(airspeed, -wind) / Glide.groundSpeed(airspeed, wind);
        return speedRatio * speedRatio;
    }
}
