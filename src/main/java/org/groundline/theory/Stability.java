package org.groundline.theory;

/// What the air around does with air that is lifted.
///
/// Source: the comparison of lapse rates in FAA-H-8083-13B, *Glider Flying Handbook*, 2024, pages
/// 9-9 and 9-10.
public enum Stability {
    /// Lifted air goes on rising, dry or saturated.
    UNSTABLE,
    /// Lifted air goes on rising only once it is saturated.
    CONDITIONAL,
    /// Lifted air sinks back.
    STABLE;

    /// Answers: how stable is air of this lapse rate? Unstable above the dry rate, stable below the
    /// saturated one, conditional from the one to the other.
    ///
    /// Neglects how high the layer reaches, and what it takes to lift the air.
    ///
    /// @param lapse of the air around (K/m); negative in an inversion
    /// @param rates at which lifted air cools
    /// @throws IllegalArgumentException if the lapse rate is not one of the air
    public static Stability of(double lapse, Lapse.Rates rates) {
        Lapse.requireLapse("lapse rate (K/m)", lapse);
        if (lapse > rates.dry()) {
            return UNSTABLE;
        }
        return lapse < rates.saturated() ? STABLE : CONDITIONAL;
    }
}
