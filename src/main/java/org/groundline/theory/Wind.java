package org.groundline.theory;

/// Wind: its parts along and across the way, and the wind triangle.
///
/// Directions are those that the wind comes *from*, and courses those flown to, clockwise from
/// north. A headwind is positive, a tailwind negative; a crosswind from the right is positive.
///
/// Source: derived here, from vectors; checked against published values of a meteorological
/// library.
public final class Wind {
    private static final double FULL_CIRCLE = 2 * Math.PI;

    private Wind() {}

    /// Answers: from how far off the nose does the wind come? θ = wind − course, from −π to π.
    ///
    /// Neglects the crab: the course over the ground counts, not the heading.
    ///
    /// @param course (rad) over the ground
    /// @param windFrom (rad) where the wind comes from
    /// @return angle (rad), above −π to π; positive where the wind comes from the right
    /// @throws IllegalArgumentException if an input is not a number of sensible size
    public static double angle(double course, double windFrom) {
        requireDirection("course (rad)", course);
        requireDirection("wind from (rad)", windFrom);
        double angle = onCircle(windFrom - course);
        return angle > Math.PI ? angle - FULL_CIRCLE : angle;
    }

    /// Answers: how much of the wind blows against the way? W cos θ.
    ///
    /// Neglects the crab that a crosswind asks for.
    ///
    /// @param windSpeed W (m/s), zero or above
    /// @param angle θ between wind and way (rad), from [#angle]
    /// @return headwind (m/s), negative for a tailwind
    /// @throws IllegalArgumentException if an input is outside its range
    public static double headwind(double windSpeed, double angle) {
        requireWind(windSpeed);
        requireDirection("angle (rad)", angle);
        return windSpeed * StrictMath.cos(angle);
    }

    /// Answers: how much of the wind blows across the way? W sin θ.
    ///
    /// Neglects nothing: it is the vector's part.
    ///
    /// @param windSpeed W (m/s), zero or above
    /// @param angle θ between wind and way (rad), from [#angle]
    /// @return crosswind (m/s), positive from the right
    /// @throws IllegalArgumentException if an input is outside its range
    public static double crosswind(double windSpeed, double angle) {
        requireWind(windSpeed);
        requireDirection("angle (rad)", angle);
        return windSpeed * StrictMath.sin(angle);
    }

    /// Answers: how far into the wind must the nose point to stay on course? asin(W sin θ / V).
    ///
    /// Neglects that the wind changes along the way.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param windSpeed W (m/s), zero or above
    /// @param angle θ between wind and course (rad), from [#angle]
    /// @return wind correction angle (rad), −π/2 to π/2; positive to the right
    /// @throws IllegalArgumentException if an input is outside its range or the crosswind is
    ///   stronger than the airspeed
    public static double correctionAngle(double airspeed, double windSpeed, double angle) {
        Require.positive("airspeed (m/s)", airspeed);
        double crosswind = crosswind(windSpeed, angle);
        if (Math.abs(crosswind) > airspeed) {
            throw Require.refused(
                    "crosswind (m/s)", crosswind, "must not be above the airspeed " + airspeed);
        }
        return StrictMath.asin(crosswind / airspeed);
    }

    /// Answers: which heading keeps this course? Course + wind correction angle.
    ///
    /// Neglects that the wind changes along the way.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param course (rad) over the ground
    /// @param windFrom (rad) where the wind comes from
    /// @param windSpeed W (m/s), zero or above
    /// @return heading (rad), 0 to below 2π
    /// @throws IllegalArgumentException if an input is outside its range or the crosswind is
    ///   stronger than the airspeed
    public static double heading(
            double airspeed, double course, double windFrom, double windSpeed) {
        double angle = angle(course, windFrom);
        return onCircle(course + correctionAngle(airspeed, windSpeed, angle));
    }

    /// Answers: how fast over the ground on this course in this wind, with the crab that it asks
    /// for? V cos(WCA) − W cos θ.
    ///
    /// Neglects that the wind changes along the way.
    ///
    /// @param airspeed V (m/s), above zero
    /// @param windSpeed W (m/s), zero or above
    /// @param angle θ between wind and course (rad), from [#angle]
    /// @return ground speed (m/s), above zero
    /// @throws IllegalArgumentException if an input is outside its range, or the wind leaves no
    ///   progress on this course
    public static double groundSpeed(double airspeed, double windSpeed, double angle) {
        double crab = correctionAngle(airspeed, windSpeed, angle);
        double groundSpeed = airspeed * StrictMath.cos(crab) - headwind(windSpeed, angle);
        if (groundSpeed <= 0) {
            throw Require.refused(
                    "wind speed (m/s)",
                    windSpeed,
                    "must leave a ground speed above zero at the airspeed " + airspeed);
        }
        return groundSpeed;
    }

    /// Answers: how fast does this wind carry to the east? u = −W sin(from).
    ///
    /// Neglects nothing: it is the vector's part.
    ///
    /// @param windSpeed W (m/s), zero or above
    /// @param windFrom (rad) where the wind comes from
    /// @return eastward part (m/s)
    /// @throws IllegalArgumentException if an input is outside its range
    public static double eastward(double windSpeed, double windFrom) {
        return -crosswind(windSpeed, windFrom);
    }

    /// Answers: how fast does this wind carry to the north? v = −W cos(from).
    ///
    /// Neglects nothing: it is the vector's part.
    ///
    /// @param windSpeed W (m/s), zero or above
    /// @param windFrom (rad) where the wind comes from
    /// @return northward part (m/s)
    /// @throws IllegalArgumentException if an input is outside its range
    public static double northward(double windSpeed, double windFrom) {
        return -headwind(windSpeed, windFrom);
    }

    /// Answers: how strong is a wind of these two parts? √(u² + v²).
    ///
    /// Neglects nothing.
    ///
    /// @param eastward u (m/s)
    /// @param northward v (m/s)
    /// @return wind speed (m/s), zero or above
    /// @throws IllegalArgumentException if an input is not a number of sensible size
    public static double speed(double eastward, double northward) {
        Require.finite("eastward (m/s)", eastward);
        Require.finite("northward (m/s)", northward);
        return StrictMath.hypot(eastward, northward);
    }

    /// Answers: where does a wind of these two parts come from? atan2(−u, −v).
    ///
    /// Neglects nothing; a calm comes from nowhere.
    ///
    /// @param eastward u (m/s)
    /// @param northward v (m/s), not zero where u is zero
    /// @return direction (rad), 0 to below 2π
    /// @throws IllegalArgumentException if both are zero or one is not a number of sensible size
    public static double from(double eastward, double northward) {
        Require.positive("wind speed (m/s)", speed(eastward, northward));
        return onCircle(StrictMath.atan2(-eastward, -northward));
    }

    private static void requireWind(double windSpeed) {
        Require.notNegative("wind speed (m/s)", windSpeed);
    }

    /// Many turns are as good as one, but beyond this a double no longer knows where it points.
    private static void requireDirection(String quantity, double angle) {
        Require.between(quantity, angle, -1_000, 1_000);
    }

    /// A direction from 0 to below 2π; the second step is for what rounds up to a full circle.
    private static double onCircle(double angle) {
        double turned = angle % FULL_CIRCLE;
        double positive = turned < 0 ? turned + FULL_CIRCLE : turned;
        return positive < FULL_CIRCLE ? positive : 0;
    }
}
