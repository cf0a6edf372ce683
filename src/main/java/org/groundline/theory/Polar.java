package org.groundline.theory;

import java.util.List;

/// A wing's speed polar as a parabola: sink rate w = a V² + b V + c over airspeed V.
///
/// It holds from the speed of minimum sink upwards. Below that a real polar bends down towards the
/// stall, so nothing is computed there. It belongs to one mass and one air density.
///
/// What always holds: a is above zero, b below, c above, and the lowest sink rate is above zero.
///
/// Source: the tangent construction is that of FAA-H-8083-13B, *Glider Flying Handbook*, 2024,
/// pages 5-10 and 5-11; the equations of the parabola are derived here.
///
/// @param a how fast the polar steepens (s/m)
/// @param b its slope at no speed
/// @param c its sink rate at no speed (m/s)
public record Polar(double a, double b, double c) {
    /// A speed that came through another unit and back may miss the speed of minimum sink by this.
    private static final double ROUNDING = 1e-9;

    /// @throws IllegalArgumentException if the three do not make a polar
    public Polar {
        Require.positive("a of the polar (s/m)", a);
        Require.below("b of the polar", b, "zero", 0);
        Require.positive("c of the polar (m/s)", c);
        Require.positive("lowest sink rate of the polar (m/s)", c - b * b / (4 * a));
    }

    /// A measured point of a polar.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param sinkRate w (m/s), above zero
    public record Point(double airspeed, double sinkRate) {
        /// @throws IllegalArgumentException if a component is not above zero
        public Point {
            Require.positive("airspeed (m/s)", airspeed);
            Require.positive("sink rate (m/s)", sinkRate);
        }
    }

    /// Answers: which polar lies closest to these measured points? The one with the least sum of
    /// squared errors in the sink rate.
    ///
    /// Neglects errors in the airspeed. Three points lie on it exactly.
    ///
    /// @param points at least three, at three or more different airspeeds
    /// @return the polar
    /// @throws IllegalArgumentException if the points do not suffice, or what fits them best is no
    ///   polar: it bulges upwards, has no minimum sink above zero speed, or climbs
    public static Polar fitted(List<Point> points) {
        return PolarFit.of(points);
    }

    /// Answers: which polar does the same wing have at another mass? Speeds and sink rates grow
    /// alike, by k = √(m₂ / m₁): a / k, b, c k.
    ///
    /// Neglects the wing's change of shape with load.
    ///
    /// @param mass m₁ (kg), above zero, of this polar
    /// @param newMass m₂ (kg), above zero
    /// @return the polar at the new mass
    /// @throws IllegalArgumentException if a mass is not above zero
    public Polar atMass(double mass, double newMass) {
        double factor = Loading.speedAtMass(1, mass, newMass);
        return new Polar(a / factor, b, c * factor);
    }

    /// Answers: at which airspeed does the wing sink least? V = −b / (2 a).
    ///
    /// Neglects nothing beyond the parabola.
    ///
    /// @return airspeed (m/s), above zero
    public double minimumSinkSpeed() {
        return -b / (2 * a);
    }

    /// Answers: how little can it sink? w = c − b² / (4 a).
    ///
    /// Neglects nothing beyond the parabola.
    ///
    /// @return sink rate (m/s), above zero
    public double minimumSink() {
        return c - b * b / (4 * a);
    }

    /// Answers: at which airspeed does it glide furthest in still air? V = √(c / a).
    ///
    /// Neglects nothing beyond the parabola.
    ///
    /// @return airspeed (m/s), above that of minimum sink
    public double bestGlideSpeed() {
        return Math.sqrt(c / a);
    }

    /// Answers: how far for one down at best, in still air? GR = 1 / (2 √(a c) + b).
    ///
    /// Neglects the difference between airspeed and its horizontal part.
    ///
    /// @return glide ratio, above zero
    public double bestGlideRatio() {
        // The same, widened by 2 √(a c) − b so that nothing cancels.
        return (2 * Math.sqrt(a * c) - b) / (4 * a * minimumSink());
    }

    /// Answers: how fast does the wing sink at this airspeed? w = a V² + b V + c.
    ///
    /// Neglects nothing beyond the parabola.
    ///
    /// @param airspeed V (m/s), at least that of minimum sink
    /// @return sink rate through the air (m/s), at least the minimum sink
    /// @throws IllegalArgumentException if the airspeed is below that of minimum sink, where the
    ///   parabola is no polar
    public double sinkRate(double airspeed) {
        requireFlown("airspeed (m/s)", airspeed);
        return (a * airspeed + b) * airspeed + c;
    }

    /// Answers: how fast does it sink in a turn flown at this airspeed? w = n^1.5 w₁(V / √n) with n
    /// = 1 / cos φ.
    ///
    /// The wing flies at the angle of attack that it has at V / √n in straight flight, where lift
    /// and drag are n times smaller. Neglects its change of shape under load.
    ///
    /// @param airspeed V (m/s), held in the turn, at least √n times that of minimum sink
    /// @param bank φ (rad) from the horizon, 0 to below π/2
    /// @return sink rate (m/s), above zero
    /// @throws IllegalArgumentException if the bank is outside its range, or the airspeed too low
    ///   for the load
    public double sinkRateInTurn(double airspeed, double bank) {
        double loadFactor = Turn.loadFactor(bank);
        return sinkRate(airspeed / Math.sqrt(loadFactor)) * loadFactor * Math.sqrt(loadFactor);
    }

    /// Answers: at which airspeed does a glide to a fixed place lose least height? The tangent from
    /// the shifted origin: V = W + √(W² + (c + s + b W) / a).
    ///
    /// Neglects that wind and air change on the way, and the wing's highest speed: see
    /// [#speedToFlyUpTo].
    ///
    /// @param headwind W (m/s); negative for a tailwind
    /// @param airSink s (m/s), of the air itself; negative where it rises, less than the wing sinks
    /// @return airspeed (m/s), above that of minimum sink and above the headwind
    /// @throws IllegalArgumentException if an input is not finite, or the air carries the wing
    public double speedToFly(double headwind, double airSink) {
        Require.finite("headwind (m/s)", headwind);
        return tangent(headwind, Glide.descentRate(minimumSink(), airSink));
    }

    /// Answers: which airspeed is that for a wing with a highest speed? [#speedToFly], or the
    /// highest speed where that is lower: up to the tangent, faster is better.
    ///
    /// Neglects that wind and air change on the way.
    ///
    /// @param maximumSpeed (m/s), at least the speed of minimum sink, and above the headwind
    /// @param headwind W (m/s), below the highest speed; negative for a tailwind
    /// @param airSink s (m/s), of the air itself; negative where it rises, less than the wing sinks
    /// @return airspeed (m/s), from that of minimum sink to the highest
    /// @throws IllegalArgumentException if an input is outside its range: against a wind as strong
    ///   as the highest speed nobody advances
    public double speedToFlyUpTo(double maximumSpeed, double headwind, double airSink) {
        requireFlown("highest speed (m/s)", maximumSpeed);
        Require.below("headwind (m/s)", headwind, "the highest speed", maximumSpeed);
        return Math.min(speedToFly(headwind, airSink), maximumSpeed);
    }

    /// Answers: how far over the ground for one down at best? (V − W) / (w + s) at the speed to
    /// fly.
    ///
    /// Neglects what [#speedToFly] neglects.
    ///
    /// @param headwind W (m/s); negative for a tailwind
    /// @param airSink s (m/s), of the air itself; negative where it rises, less than the wing sinks
    /// @return glide ratio over the ground, above zero
    /// @throws IllegalArgumentException if [#speedToFly] refuses
    public double bestRatioOverGround(double headwind, double airSink) {
        double airspeed = speedToFly(headwind, airSink);
        return Glide.ratioOverGround(airspeed, headwind, sinkRate(airspeed), airSink);
    }

    /// Answers: how fast between thermals, when the next one is expected to lift this much? V =
    /// √((c + s + m) / a).
    ///
    /// Not corrected for wind: thermals drift with it, and only a glide to a fixed place needs
    /// that. Neglects the height at which the next thermal is met, and the wing's highest speed:
    /// see [#speedBetweenThermalsUpTo].
    ///
    /// @param climb m (m/s), expected average, zero or above
    /// @param airSink s (m/s), of the air between; negative where it rises, by less than w + m
    /// @return airspeed (m/s), above that of minimum sink
    /// @throws IllegalArgumentException if an input is outside its range
    public double speedBetweenThermals(double climb, double airSink) {
        Require.notNegative("expected climb (m/s)", climb);
        return tangent(0, Glide.descentRate(minimumSink() + climb, airSink));
    }

    /// Answers: which airspeed is that for a wing with a highest speed? [#speedBetweenThermals], or
    /// the highest speed where that is lower.
    ///
    /// Neglects the height at which the next thermal is met.
    ///
    /// @param maximumSpeed (m/s), at least the speed of minimum sink
    /// @param climb m (m/s), expected average, zero or above
    /// @param airSink s (m/s), of the air between; negative where it rises, by less than w + m
    /// @return airspeed (m/s), from that of minimum sink to the highest
    /// @throws IllegalArgumentException if an input is outside its range
    public double speedBetweenThermalsUpTo(double maximumSpeed, double climb, double airSink) {
        requireFlown("highest speed (m/s)", maximumSpeed);
        return Math.min(speedBetweenThermals(climb, airSink), maximumSpeed);
    }

    /// Answers: how far per second on average, climbing and gliding in turn? V m / (m + w(V)) at
    /// the speed between thermals.
    ///
    /// Neglects wind, moving air between the thermals and the time to find one.
    ///
    /// @param climb m (m/s), average in the thermals, above zero
    /// @return cross-country speed (m/s), above zero
    /// @throws IllegalArgumentException if the climb is not above zero
    public double crossCountrySpeed(double climb) {
        Require.positive("climb (m/s)", climb);
        double airspeed = speedBetweenThermals(climb, 0);
        return Soaring.crossCountrySpeed(airspeed, sinkRate(airspeed), climb);
    }

    /// Where the tangent from the shifted origin touches. W² + (c + s + b W) / a is the square of
    /// the headwind's distance from the speed of minimum sink, plus the least descent over a: so
    /// written, the root is never of a negative number and the result never below minimum sink.
    private double tangent(double headwind, double leastDescent) {
        double distance = headwind - minimumSinkSpeed();
        return headwind + Math.sqrt(distance * distance + leastDescent / a);
    }

    private void requireFlown(String quantity, double airspeed) {
        Require.positive(quantity, airspeed);
        if (airspeed < minimumSinkSpeed() * (1 - ROUNDING)) {
            throw Require.refused(
                    quantity,
                    airspeed,
                    "must be at least that of minimum sink, " + minimumSinkSpeed());
        }
    }
}
