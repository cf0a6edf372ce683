package org.groundline.theory;

/// Thunderstorms: how far, how soon, and whether one would be down before. Any thunder means: be
/// down.
///
/// Source: derived here, from distance over speed; the speed of sound, 340 m/s, is common practice,
/// no source.
public final class Storm {
    private static final double SOUND = 340; // (m/s)

    private Storm() {}

    /// Answers: how far away was the lightning whose thunder came so much later? 340 m/s × t.
    ///
    /// Neglects temperature and wind, which change the speed of sound by some per cent.
    ///
    /// @param delay t (s), zero or above
    /// @return distance (m), zero or above
    /// @throws IllegalArgumentException if the delay is below zero
    public static double lightningDistance(double delay) {
        Require.notNegative("delay (s)", delay);
        return SOUND * delay;
    }

    /// Answers: how soon is a gust front here? d / V_front.
    ///
    /// Neglects that fronts speed up.
    ///
    /// @param distance d (m), zero or above
    /// @param frontSpeed V_front (m/s), above zero
    /// @return time (s), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double frontArrival(double distance, double frontSpeed) {
        Require.notNegative("distance (m)", distance);
        Require.positive("speed of the front (m/s)", frontSpeed);
        return distance / frontSpeed;
    }

    /// Answers: how long before the gust front would one be down? d / V_front − h / w.
    ///
    /// Neglects lift ahead of the front, which may keep one up. No margin is a safe one.
    ///
    /// @param distance d of the front (m), zero or above
    /// @param frontSpeed V_front (m/s), above zero
    /// @param height h above the landing (m), zero or above
    /// @param sinkRate w (m/s), above zero
    /// @return time (s); below zero the front comes first
    /// @throws IllegalArgumentException if an input is outside its range
    public static double marginBeforeFront(
            double distance, double frontSpeed, double height, double sinkRate) {
        return frontArrival(distance, frontSpeed) - Glide.time(height, sinkRate);
    }
}
