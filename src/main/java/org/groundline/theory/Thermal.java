package org.groundline.theory;

/// The thermal day: when it starts, how high it goes, how fast one climbs; freezing level and
/// foehn.
///
/// Source: derived here, from straight lines of temperature over height. Lapse rates are positive
/// where it gets colder with height.
public final class Thermal {
    private Thermal() {}

    /// Answers: how fast does one climb in this thermal? Updraft − sink rate in the turn.
    ///
    /// Neglects the thermal's profile. A vario shows this net value already.
    ///
    /// @param updraft of the air (m/s), above the sink rate
    /// @param sinkInTurn the glider's sink rate in the turn (m/s), above zero
    /// @return climb (m/s), above zero
    /// @throws IllegalArgumentException if an input is outside its range or the updraft does not
    ///   lift the glider
    public static double climb(double updraft, double sinkInTurn) {
        Require.positive("updraft (m/s)", updraft);
        Require.positive("sink rate in the turn (m/s)", sinkInTurn);
        if (updraft <= sinkInTurn) {
            throw Require.refused(
                    "updraft (m/s)", updraft, "must be above the sink rate " + sinkInTurn);
        }
        return updraft - sinkInTurn;
    }

    /// Answers: how long does this gain of height take? Δh / (updraft − sink).
    ///
    /// Neglects the time to find and centre the thermal.
    ///
    /// @param gain Δh (m), zero or above
    /// @param updraft of the air (m/s), above the sink rate
    /// @param sinkInTurn the glider's sink rate in the turn (m/s), above zero
    /// @return time (s), zero or above
    /// @throws IllegalArgumentException if an input is outside its range or the updraft does not
    ///   lift the glider
    public static double climbTime(double gain, double updraft, double sinkInTurn) {
        Require.notNegative("gain (m)", gain);
        return gain / climb(updraft, sinkInTurn);
    }

    /// Answers: how long until one must leave the climb, this far below the cloud? (h_b − h −
    /// margin) / climb.
    ///
    /// Neglects that the lift often grows just below the cloud.
    ///
    /// @param cloudBase h_b (m), above the same level as the height
    /// @param height h (m), now
    /// @param margin to be kept below the cloud (m), zero or above
    /// @param climb (m/s), above zero
    /// @return time (s), zero or above
    /// @throws IllegalArgumentException if an input is outside its range or the margin is used up
    public static double timeToCloud(double cloudBase, double height, double margin, double climb) {
        Require.finite("cloud base (m)", cloudBase);
        Require.finite("height (m)", height);
        Require.notNegative("margin (m)", margin);
        Require.positive("climb (m/s)", climb);
        double ceiling = cloudBase - margin;
        if (height > ceiling) {
            throw Require.refused("height (m)", height, "must not be above " + ceiling);
        }
        return (ceiling - height) / climb;
    }

    /// Answers: how high do blue thermals go? (T_s − T_e) / (Γ_d − Γ_e), where rising air has
    /// cooled to the air around.
    ///
    /// Neglects mixing and overshooting.
    ///
    /// @param surface T_s, the heated air at the ground (K), at least the air around
    /// @param around T_e, the air around, its line drawn down to the ground (K), above zero
    /// @param lapseAround Γ_e (K/m), below the dry rate
    /// @param dryLapse Γ_d (K/m), above zero
    /// @return top above the ground (m), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double blueTop(
            double surface, double around, double lapseAround, double dryLapse) {
        Require.positive("temperature around (K)", around);
        requireAtLeast("temperature at the ground (K)", surface, around);
        Require.positive("dry lapse rate (K/m)", dryLapse);
        Lapse.requireLapse("lapse rate around (K/m)", lapseAround);
        if (lapseAround >= dryLapse) {
            throw Require.refused(
                    "lapse rate around (K/m)",
                    lapseAround,
                    "must be below the dry one " + dryLapse);
        }
        return (surface - around) / (dryLapse - lapseAround);
    }

    /// Answers: how warm must it get at the ground for thermals to break through an inversion?
    ///
    /// T_i + Γ_d Δz.
    ///
    /// Neglects mixing.
    ///
    /// @param inversion T_i, at its top (K), above zero
    /// @param height Δz of that top above the ground (m), zero or above
    /// @param dryLapse Γ_d (K/m), above zero
    /// @return trigger temperature (K), at least that of the inversion
    /// @throws IllegalArgumentException if an input is outside its range
    public static double trigger(double inversion, double height, double dryLapse) {
        Require.positive("temperature of the inversion (K)", inversion);
        Require.notNegative("height (m)", height);
        Require.positive("dry lapse rate (K/m)", dryLapse);
        return inversion + dryLapse * height;
    }

    /// Answers: at which altitude does it freeze? Elevation + t / Γ, t in °C.
    ///
    /// Neglects that the lapse rate changes with height.
    ///
    /// @param elevation of the station (m)
    /// @param temperature there (K), at least 273.15
    /// @param lapse Γ of the free air (K/m), above zero
    /// @return freezing level (m), at least the elevation
    /// @throws IllegalArgumentException if an input is outside its range; where it freezes at the
    ///   station there is no level above it
    public static double freezingLevel(double elevation, double temperature, double lapse) {
        Require.between("elevation (m)", elevation, -5_000, 11_000);
        requireAtLeast("temperature (K)", temperature, Humidity.FREEZING);
        Require.positive("lapse rate (K/m)", lapse);
        return elevation + (temperature - Humidity.FREEZING) / lapse;
    }

    /// Answers: by how much is the air warmer behind the mountains than at the same height before
    /// them, if it rains out? (Γ_d − Γ_s) (z_ridge − z_base).
    ///
    /// Neglects mixing, and air that came over without climbing.
    ///
    /// @param cloudBase z_base before the mountains (m)
    /// @param ridge z_ridge (m), at least the cloud base
    /// @param rates Γ_d and Γ_s
    /// @return warming (K), zero or above
    /// @throws IllegalArgumentException if an input is outside its range
    public static double foehnWarming(double cloudBase, double ridge, Lapse.Rates rates) {
        Require.finite("cloud base (m)", cloudBase);
        requireAtLeast("ridge (m)", ridge, cloudBase);
        return (rates.dry() - rates.saturated()) * (ridge - cloudBase);
    }

    private static void requireAtLeast(String quantity, double value, double lowest) {
        Require.finite(quantity, value);
        if (value < lowest) {
            throw Require.refused(quantity, value, "must be at least " + lowest);
        }
    }
}
