package org.groundline.measure;

import tech.units.indriya.unit.UnitDimension;

import java.util.Map;

/// What kind of quantity something is: a length, a speed, a plain number.
///
/// An angle is a dimension of its own here, unlike in the SI: a bank angle added to a glide ratio,
/// or the cosine of a plain number, is a mistake that should be found.
public record Dimension(javax.measure.Dimension base) {
    public static final Dimension NUMBER = new Dimension(UnitDimension.NONE);
    public static final Dimension ANGLE = new Dimension(UnitDimension.parse('A'));
    public static final Dimension LENGTH = new Dimension(UnitDimension.LENGTH);
    public static final Dimension MASS = new Dimension(UnitDimension.MASS);
    public static final Dimension TIME = new Dimension(UnitDimension.TIME);
    public static final Dimension TEMPERATURE = new Dimension(UnitDimension.TEMPERATURE);
    public static final Dimension AREA = LENGTH.power(2);
    public static final Dimension SPEED = LENGTH.over(TIME);
    public static final Dimension ACCELERATION = SPEED.over(TIME);
    public static final Dimension SLOWNESS = TIME.over(LENGTH);
    public static final Dimension TURN_RATE = ANGLE.over(TIME);
    public static final Dimension FORCE = MASS.times(ACCELERATION);
    public static final Dimension PRESSURE = FORCE.over(AREA);
    public static final Dimension ENERGY = FORCE.times(LENGTH);
    public static final Dimension DENSITY = MASS.over(LENGTH.power(3));
    public static final Dimension LOADING = MASS.over(AREA);
    public static final Dimension LAPSE = TEMPERATURE.over(LENGTH);
    public static final Dimension HEIGHT_PER_PRESSURE = LENGTH.over(PRESSURE);

    private static final Map<Dimension, String> NAMES =
            Map.ofEntries(
                    Map.entry(NUMBER, "a plain number"),
                    Map.entry(ANGLE, "an angle"),
                    Map.entry(LENGTH, "a length (m)"),
                    Map.entry(MASS, "a mass (kg)"),
                    Map.entry(TIME, "a time (s)"),
                    Map.entry(TEMPERATURE, "a temperature (K)"),
                    Map.entry(AREA, "an area (m²)"),
                    Map.entry(SPEED, "a speed (m/s)"),
                    Map.entry(ACCELERATION, "an acceleration (m/s²)"),
                    Map.entry(SLOWNESS, "a sink rate over a square of airspeed (s/m)"),
                    Map.entry(TURN_RATE, "a rate of turn (rad/s)"),
                    Map.entry(FORCE, "a force (N)"),
                    Map.entry(PRESSURE, "a pressure (N/m²)"),
                    Map.entry(ENERGY, "an energy (J)"),
                    Map.entry(DENSITY, "a density (kg/m³)"),
                    Map.entry(LOADING, "a wing loading (kg/m²)"),
                    Map.entry(LAPSE, "a lapse rate (K/m)"),
                    Map.entry(HEIGHT_PER_PRESSURE, "a height per pressure (m/Pa)"));

    public Dimension times(Dimension other) {
        return new Dimension(base.multiply(other.base));
    }

    public Dimension over(Dimension other) {
        return new Dimension(base.divide(other.base));
    }

    public Dimension power(int exponent) {
        return new Dimension(base.pow(exponent));
    }

    public Dimension root(int degree) {
        return new Dimension(base.root(degree));
    }

    /// In words for people, with its SI unit: "a speed (m/s)", or "something in …" without a name.
    @Override
    public String toString() {
        String named = NAMES.get(this);
        return named != null ? named : "something in " + siUnit();
    }

    private String siUnit() {
        return base.toString()
                .replace("[L]", "m")
                .replace("[M]", "kg")
                .replace("[T]", "s")
                .replace("[Θ]", "K")
                .replace("[A]", "rad");
    }
}
