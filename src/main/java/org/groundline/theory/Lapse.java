package org.groundline.theory;

/// How rising and sinking air changes its temperature.
///
/// Which dry rate is taught (9.76, 9.8 or 10 K/km, 3 °C for each 1000 ft) differs, so the functions
/// of height take it as an input. Lapse rates are positive where it gets colder with height.
///
/// Sources: dry adiabat from g / c_p and Poisson's equation; saturated adiabat by the equation of
/// pseudo-adiabatic ascent as meteorological libraries have it (Bakhshaii and Stull, *Saturated
/// Pseudoadiabats*, Journal of Applied Meteorology and Climatology 52, 2013), both from memory and
/// checked against published test values; rates for teaching in FAA-H-8083-13B, *Glider Flying
/// Handbook*, 2024, pages 9-9 and 9-10.
public final class Lapse {
    static final double HEAT_CAPACITY = 1005; // c_p (J/(kg K))
    static final double GAS_CONSTANT = 287.05; // R (J/(kg K))
    static final double KAPPA = 2.0 / 7; // R / c_p

    private static final double LATENT_HEAT = 2.501e6; // L (J/kg), at 0 °C
    private static final int STEPS = 200;

    /// The two rates at which rising air cools.
    ///
    /// @param dry below the cloud base (K/m), above zero
    /// @param saturated within the cloud (K/m), above zero, at most the dry rate
    public record Rates(double dry, double saturated) {
        public Rates {
            Require.positive("dry lapse rate (K/m)", dry);
            Require.positive("saturated lapse rate (K/m)", saturated);
            Require.between("saturated lapse rate (K/m)", saturated, 0, dry);
        }
    }

    private Lapse() {}

    /// Answers: by how much does dry air cool for each metre that it rises? Γ_d = g / c_p.
    ///
    /// Neglects humidity, which makes it smaller by less than 1 %.
    ///
    /// @return lapse rate (K/m), 0.00976
    public static double dry() {
        return StandardAtmosphere.GRAVITY / HEAT_CAPACITY;
    }

    /// Answers: by how much does saturated air cool for each metre that it rises? Γ_s = g (1 + L r
    /// / (R T)) / (c_p + ε L² r / (R T²)), r the saturated mixing ratio.
    ///
    /// Neglects ice and the liquid that is carried along.
    ///
    /// @param pressure (Pa), at least twice the saturation vapour pressure
    /// @param temperature T (K), 193.15 to 333.15
    /// @return lapse rate (K/m), 0.0025 to 0.0098
    /// @throws IllegalArgumentException if an input is outside its range
    public static double saturated(double pressure, double temperature) {
        double slope = saturatedSlope(pressure, temperature);
        return slope * StandardAtmosphere.GRAVITY / (GAS_CONSTANT * temperature);
    }

    /// Answers: how warm is air after rising by so much? T − Γ h.
    ///
    /// Neglects that the rate changes along the way, and condensation.
    ///
    /// @param temperature T at the start (K), above zero
    /// @param rise h (m); negative where the air sinks
    /// @param lapse Γ (K/m)
    /// @return temperature (K), above zero
    /// @throws IllegalArgumentException if an input or the answer is outside its range
    public static double lifted(double temperature, double rise, double lapse) {
        Require.positive("temperature (K)", temperature);
        Require.finite("rise (m)", rise);
        requireLapse("lapse rate (K/m)", lapse);
        double lifted = temperature - lapse * rise;
        Require.positive("temperature (K) after the rise", lifted);
        return lifted;
    }

    /// Answers: how warm is air that rises dry to the cloud base and saturated from there? T − Γ_d
    /// min(h, h_b) − Γ_s max(h − h_b, 0).
    ///
    /// Neglects that the saturated rate changes with height.
    ///
    /// @param temperature T at the start (K), above zero
    /// @param rise h (m), zero or above
    /// @param cloudBase h_b above the start (m), zero or above
    /// @param rates Γ_d and Γ_s
    /// @return temperature (K), above zero
    /// @throws IllegalArgumentException if an input or the answer is outside its range
    public static double liftedIntoCloud(
            double temperature, double rise, double cloudBase, Rates rates) {
        Require.notNegative("rise (m)", rise);
        Require.notNegative("cloud base (m)", cloudBase);
        double below = lifted(temperature, Math.min(rise, cloudBase), rates.dry);
        return lifted(below, Math.max(rise - cloudBase, 0), rates.saturated);
    }

    /// Answers: how warm is dry air brought to another pressure? T (p₂ / p₁)^κ, κ = R / c_p = 2/7.
    ///
    /// Neglects humidity and exchange of heat.
    ///
    /// @param temperature T (K), above zero
    /// @param pressure p₁ (Pa), above zero
    /// @param newPressure p₂ (Pa), above zero
    /// @return temperature (K), above zero
    /// @throws IllegalArgumentException if an input is not above zero
    public static double dryAdiabat(double temperature, double pressure, double newPressure) {
        Require.positive("temperature (K)", temperature);
        Require.positive("pressure (Pa)", pressure);
        Require.positive("new pressure (Pa)", newPressure);
        return temperature * StrictMath.pow(newPressure / pressure, KAPPA);
    }

    /// Answers: how warm is saturated air that rises to another pressure? dT / d ln p = (R T + L r)
    /// / (c_p + ε L² r / (R T²)), followed from p₁ to p₂.
    ///
    /// Neglects ice, and counts what condenses as fallen out.
    ///
    /// @param temperature T (K), 193.15 to 333.15
    /// @param pressure p₁ (Pa), at least twice the saturation vapour pressure
    /// @param newPressure p₂ (Pa), at most the pressure and such that the air stays above 193.15 K
    /// @return temperature (K), at most the one at the start
    /// @throws IllegalArgumentException if an input is outside its range
    public static double saturatedAdiabat(double temperature, double pressure, double newPressure) {
        Require.positive("pressure (Pa)", pressure);
        Require.positive("new pressure (Pa)", newPressure);
        if (newPressure > pressure) {
            throw Require.refused(
                    "new pressure (Pa)", newPressure, "must not be above the first " + pressure);
        }
        double factor = StrictMath.pow(newPressure / pressure, 1.0 / STEPS);
        double lifted = temperature;
        double at = pressure;
        for (int i = 0; i < STEPS; i++) {
            lifted = saturatedStep(lifted, at, factor);
            at *= factor;
        }
        return lifted;
    }

    /// One step of Heun's method along the saturated adiabat, from a pressure to a factor of it.
    private static double saturatedStep(double temperature, double pressure, double factor) {
        double step = StrictMath.log(factor);
        double first = saturatedSlope(pressure, temperature);
        double second = saturatedSlope(pressure * factor, temperature + step * first);
        return temperature + step * (first + second) / 2;
    }

    /// dT / d ln p along the saturated adiabat (K).
    private static double saturatedSlope(double pressure, double temperature) {
        double gasHeat = GAS_CONSTANT * temperature;
        double latent = LATENT_HEAT * Humidity.saturatedMixingRatio(pressure, temperature);
        double capacity =
                HEAT_CAPACITY
                        + Humidity.VAPOUR_RATIO * LATENT_HEAT * latent / (gasHeat * temperature);
        return (gasHeat + latent) / capacity;
    }

    /// Steeper than a few kelvins a metre is met nowhere in the air.
    static void requireLapse(String quantity, double lapse) {
        Require.between(quantity, lapse, -10, 10);
    }
}
