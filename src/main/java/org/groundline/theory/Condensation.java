package org.groundline.theory;

/// Air that is lifted until its vapour condenses to liquid water, after Romps (2017; see
/// [CloudBase]).
///
/// His closed form needs a function (Lambert's W) that the JDK lacks. Here the condition that it
/// solves is solved itself, by Newton's method: with τ = T_L / T, f(τ) = ln RH + a ln τ + b (1 −
/// 1/τ) = 0. As b < −a < 0, f falls and is convex between 0 and 1, f(1) is not above zero, and the
/// steps come to the only solution there from the other side, without turning back.
record Condensation(double pressure, double temperature, double relativeHumidity) {
    private static final double TRIPLE_TEMPERATURE = 273.16; // (K)
    private static final double TRIPLE_PRESSURE = 611.65; // (Pa)
    private static final double VAPOUR_ENERGY = 2.3740e6; // of vapour over liquid (J/kg)
    private static final double GRAVITY = 9.81; // as in the source (m/s²)
    private static final double GAS_AIR = 287.04; // (J/(kg K)), and so the next
    private static final double GAS_VAPOUR = 461;
    private static final double HEAT_AIR = 719 + GAS_AIR; // c_p
    private static final double HEAT_VAPOUR = 1418 + GAS_VAPOUR; // c_p
    private static final double HEAT_LIQUID = 4119;

    /// c_p of vapour less that of liquid, over the gas constant.
    private static final double CURVE = (HEAT_VAPOUR - HEAT_LIQUID) / GAS_VAPOUR;

    /// The heat of vaporisation at absolute zero over the gas constant (K).
    private static final double HEAT =
            (VAPOUR_ENERGY - (1418 - HEAT_LIQUID) * TRIPLE_TEMPERATURE) / GAS_VAPOUR;

    Condensation {
        Require.positive("pressure (Pa)", pressure);
        Humidity.requireTemperature(temperature);
        Require.between("relative humidity", relativeHumidity, 0.0001, 1);
        double saturated = saturationPressure(temperature);
        if (pressure < 2 * saturated) {
            throw Require.refused(
                    "pressure (Pa)", pressure, "must be at least twice the vapour's " + saturated);
        }
    }

    double level() {
        return heat() * temperature / GRAVITY * (1 - cooling());
    }

    /// τ, the temperature of condensation over the temperature at the start.
    private double cooling() {
        double a = heat() / gas() - CURVE;
        double b = -HEAT / temperature;
        double cooling = 1;
        double step = 1;
        while (Math.abs(step) > 1e-13) {
            double value =
                    StrictMath.log(relativeHumidity)
                            + a * StrictMath.log(cooling)
                            + b * (1 - 1 / cooling);
            step = value / (a / cooling + b / (cooling * cooling));
            cooling -= step;
        }
        return cooling;
    }

    /// Vapour's share of the mass.
    private double vapour() {
        double vapourPressure = relativeHumidity * saturationPressure(temperature);
        return GAS_AIR
                * vapourPressure
                / (GAS_VAPOUR * pressure + (GAS_AIR - GAS_VAPOUR) * vapourPressure);
    }

    private double gas() {
        return (1 - vapour()) * GAS_AIR + vapour() * GAS_VAPOUR;
    }

    private double heat() {
        return (1 - vapour()) * HEAT_AIR + vapour() * HEAT_VAPOUR;
    }

    private static double saturationPressure(double temperature) {
        return TRIPLE_PRESSURE
                * StrictMath.pow(temperature / TRIPLE_TEMPERATURE, CURVE)
                * StrictMath.exp(HEAT * (1 / TRIPLE_TEMPERATURE - 1 / temperature));
    }
}
