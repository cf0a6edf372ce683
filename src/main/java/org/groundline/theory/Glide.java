package org.groundline.theory;

/// The straight, steady glide: how far, how long, from how high.
///
/// The path through the air is flat enough (ratio 6 or better) to take the airspeed for its
/// horizontal part; the difference is below 1.4 %. Sink rates are positive downwards, a headwind is
/// positive and a tailwind negative.
///
/// Source: FAA-H-8083-13B, *Glider Flying Handbook*, 2024, chapters 3, 5 and 11.
public final class Glide {
    private Glide() {}

    /// Answers: how many metres forward for one down, in still air? GR = V / w.
    ///
    /// Neglects the difference between airspeed and its horizontal part.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param sinkRate w (m/s), above zero
    /// @return glide ratio, above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double ratio(double airspeed, double sinkRate) {
        Require.positive("airspeed (m/s)", airspeed);
        Require.positive("sink rate (m/s)", sinkRate);
        return airspeed / sinkRate;
    }

    /// Answers: how steep is a glide path of this ratio? tan γ = 1 / GR.
    ///
    /// Neglects nothing: it is the ratio's geometry.
    ///
    /// @param ratio glide ratio GR, above zero
    /// @return glide angle γ (rad), positive below the horizon, 0 to π/2
    /// @throws IllegalArgumentException if the ratio is not above zero
    public static double angle(double ratio) {
        Require.positive("glide ratio", ratio);
        return StrictMath.atan(1 / ratio);
    }

    /// Answers: how fast over the ground along the track? V_g = V − W.
    ///
    /// Neglects a wind from the side.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param headwind W (m/s), below the airspeed; negative for a tailwind
    /// @return ground speed (m/s), above zero
    /// @throws IllegalArgumentException if the airspeed is not above zero or the wind holds the
    ///   glider back
    public static double groundSpeed(double airspeed, double headwind) {
        Require.positive("airspeed (m/s)", airspeed);
        Require.below("headwind (m/s)", headwind, "the airspeed", airspeed);
        return airspeed - headwind;
    }

    /// Answers: how fast does the glider go down in moving air? w + s.
    ///
    /// Neglects that the air's movement changes along the way.
    ///
    /// @param sinkRate w (m/s), above zero, through the air
    /// @param airSink s (m/s), of the air itself; negative where it rises
    /// @return rate of descent (m/s), above zero
    /// @throws IllegalArgumentException if the sink rate is not above zero or the air carries the
    ///   glider
    public static double descentRate(double sinkRate, double airSink) {
        Require.positive("sink rate (m/s)", sinkRate);
        Require.finite("sink of the air (m/s)", airSink);
        if (sinkRate + airSink <= 0) {
            throw Require.refused(
                    "sink of the air (m/s)", airSink, "must be above " + -sinkRate + " to descend");
        }
        return sinkRate + airSink;
    }

    /// Answers: how far over the ground does this height reach? d = h V_g / w.
    ///
    /// Neglects flare, turns and a wind that changes with height.
    ///
    /// @param height h (m), zero or above
    /// @param groundSpeed V_g (m/s), above zero, from [#groundSpeed]
    /// @param descentRate w (m/s), above zero, from [#descentRate]
    /// @return distance over the ground (m), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double distance(double height, double groundSpeed, double descentRate) {
        Require.notNegative("height (m)", height);
        return height * ratio(groundSpeed, descentRate);
    }

    /// Answers: how long does this height last? t = h / w; the wind does not change it.
    ///
    /// Neglects flare and turns.
    ///
    /// @param height h (m), zero or above
    /// @param descentRate w (m/s), above zero
    /// @return time (s), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double time(double height, double descentRate) {
        Require.notNegative("height (m)", height);
        Require.positive("rate of descent (m/s)", descentRate);
        return height / descentRate;
    }

    /// Answers: how much height does it take to arrive with a reserve? h = d w / V_g + r.
    ///
    /// Neglects turns and a wind that changes with height.
    ///
    /// @param distance d (m) over the ground, zero or above
    /// @param groundSpeed V_g (m/s), above zero
    /// @param descentRate w (m/s), above zero
    /// @param reserve r (m), zero or above, left on arrival
    /// @return height above the place of arrival (m), at least the reserve
    /// @throws IllegalArgumentException if an input is outside its range
    public static double heightNeeded(
            double distance, double groundSpeed, double descentRate, double reserve) {
        Require.notNegative("distance (m)", distance);
        Require.notNegative("reserve (m)", reserve);
        return distance / ratio(groundSpeed, descentRate) + reserve;
    }

    /// Answers: which glide ratio was flown over this distance? GR = d / h.
    ///
    /// Neglects nothing: wind and moving air are in the result.
    ///
    /// @param distance d (m) over the ground, above zero
    /// @param heightLost h (m), above zero
    /// @return glide ratio over the ground, above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double ratioFlown(double distance, double heightLost) {
        Require.positive("distance (m)", distance);
        Require.positive("height lost (m)", heightLost);
        return distance / heightLost;
    }

    /// Answers: how fast does a wing of this glide ratio sink at this airspeed? w = V / GR.
    ///
    /// Neglects the difference between airspeed and its horizontal part.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param ratio glide ratio GR in still air, above zero
    /// @return sink rate (m/s), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double sinkRate(double airspeed, double ratio) {
        Require.positive("airspeed (m/s)", airspeed);
        Require.positive("glide ratio", ratio);
        return airspeed / ratio;
    }

    /// Answers: how far over the ground for one down, in this wind? GR (V − W) / V.
    ///
    /// Neglects moving air and a wind from the side.
    ///
    /// @param ratio glide ratio GR in still air, above zero
    /// @param airspeed V (m/s), above zero
    /// @param headwind W (m/s), below the airspeed; negative for a tailwind
    /// @return glide ratio over the ground, above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double ratioInWind(double ratio, double airspeed, double headwind) {
        return groundSpeed(airspeed, headwind) / sinkRate(airspeed, ratio);
    }

    /// Answers: how far over the ground for one down, in wind and in moving air? GR = (V − W) / (w
    /// + s).
    ///
    /// Neglects a wind from the side, and that wind and air change along the way.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param headwind W (m/s), below the airspeed; negative for a tailwind
    /// @param sinkRate w (m/s), above zero, through the air
    /// @param airSink s (m/s), of the air itself, above −w; negative where it rises
    /// @return glide ratio over the ground, above zero
    /// @throws IllegalArgumentException if an input is outside its range
    public static double ratioOverGround(
            double airspeed, double headwind, double sinkRate, double airSink) {
        return groundSpeed(airspeed, headwind) / descentRate(sinkRate, airSink);
    }

    /// Answers: which airspeed does the half-headwind rule give? V = V_bg + W / 2.
    ///
    /// A rule for sailplanes (page 5-10). It neglects the shape of the polar: a paraglider's, which
    /// steepens early, asks for much less; see [Polar#speedToFly].
    ///
    /// @param bestGlideSpeed V_bg (m/s), above zero, in still air
    /// @param headwind W (m/s), zero or above
    /// @return airspeed (m/s), at least the speed of best glide
    /// @throws IllegalArgumentException if an input is outside its range
    public static double speedByHalfHeadwindRule(double bestGlideSpeed, double headwind) {
        Require.positive("speed of best glide (m/s)", bestGlideSpeed);
        Require.notNegative("headwind (m/s)", headwind);
        return bestGlideSpeed + headwind / 2;
    }
}
