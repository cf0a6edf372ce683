package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of the weather: cloud base, lapse rates, thermals and storms.
final class WeatherValues {
    private static final double FOOT = 0.3048; // (m)
    private static final double TAUGHT_DRY_LAPSE = 0.0098; // (K/m)

    static final Room ROOM =
            Room.named(
                    "weather",
                    of(
                            "cloud_base_400ft_rule",
                            g -> CloudBase.byFeetRule(g.get("spread_C")) / FOOT),
                    of("cloud_base_125m_rule", g -> CloudBase.byMetreRule(g.get("spread_K"))),
                    of(
                            "cloud_base_lawrence_rh",
                            g -> CloudBase.byHumidity(g.si("t_C", "°C"), g.si("rh_pct", "%"))),
                    of(
                            "lcl_romps2017_liquid",
                            g ->
                                    CloudBase.condensationLevel(
                                            g.get("p_Pa"), g.get("T_K"), g.get("rh"))),
                    of("lcl_pressure_bolton", WeatherValues::condensationPressure),
                    of("lcl_temperature_bolton", WeatherValues::condensationTemperature),
                    of("dry_adiabat_temperature", WeatherValues::dryAdiabat),
                    of("moist_adiabat_temperature", WeatherValues::saturatedAdiabat),
                    of("dalr_parcel", WeatherValues::liftedByHandbook),
                    of("dalr_K_per_km", g -> 1000 * Lapse.dry()),
                    of(
                            "dalr_parcel_si",
                            g ->
                                    Lapse.lifted(
                                                    g.si("t0_C", "°C"),
                                                    g.get("height_m"),
                                                    TAUGHT_DRY_LAPSE)
                                            - 273.15),
                    of("parcel_two_layer", WeatherValues::liftedIntoCloud),
                    of("freezing_level", WeatherValues::freezingLevel),
                    of("thermal_climb_time", WeatherValues::climbTime),
                    of("time_to_cloud", WeatherValues::timeToCloud),
                    of("foehn_warming", WeatherValues::foehnWarming),
                    of("top_of_blue_thermals", WeatherValues::blueTop),
                    of("trigger_temperature", WeatherValues::trigger),
                    of("gust_front_arrival_min", g -> arrival(g) / 60),
                    of("gust_front_margin_min", WeatherValues::frontMarginMin),
                    of(
                            "lightning_distance_km",
                            g -> Storm.lightningDistance(g.get("delay_s")) / 1000));

    private WeatherValues() {}

    private static double condensationPressure(Given g) {
        double pressure =
                CloudBase.condensationPressure(
                        g.si("p_hPa", "hPa"), g.si("t_C", "°C"), g.si("td_C", "°C"));
        return pressure / 100;
    }

    private static double condensationTemperature(Given g) {
        return CloudBase.condensationTemperature(g.si("t_C", "°C"), g.si("td_C", "°C")) - 273.15;
    }

    private static double dryAdiabat(Given g) {
        return Lapse.dryAdiabat(g.get("T0_K"), g.si("p0_hPa", "hPa"), g.si("p_hPa", "hPa"));
    }

    private static double saturatedAdiabat(Given g) {
        return Lapse.saturatedAdiabat(g.get("T0_K"), g.si("p0_hPa", "hPa"), g.si("p_hPa", "hPa"));
    }

    /// At 3 °C for each 1000 ft.
    private static double liftedByHandbook(Given g) {
        return Lapse.lifted(g.si("t0_C", "°C"), g.si("height_ft", "ft"), 3 / (1000 * FOOT))
                - 273.15;
    }

    private static double liftedIntoCloud(Given g) {
        double cloudBase = CloudBase.byMetreRule(g.get("t0_C") - g.get("td_C"));
        var rates = new Lapse.Rates(TAUGHT_DRY_LAPSE, g.si("salr_K_km", "K/km"));
        return Lapse.liftedIntoCloud(g.si("t0_C", "°C"), g.get("height_m"), cloudBase, rates)
                - 273.15;
    }

    private static double freezingLevel(Given g) {
        return Thermal.freezingLevel(
                g.get("elev_m"), g.si("t0_C", "°C"), g.si("lapse_K_km", "K/km"));
    }

    private static double climbTime(Given g) {
        return Thermal.climbTime(g.get("gain_m"), g.get("updraft_ms"), g.get("sink_in_turn_ms"));
    }

    private static double timeToCloud(Given g) {
        return Thermal.timeToCloud(
                g.get("base_m"), g.get("height_m"), g.get("margin_m"), g.get("climb_ms"));
    }

    private static double foehnWarming(Given g) {
        var rates = new Lapse.Rates(g.si("dalr_K_km", "K/km"), g.si("salr_K_km", "K/km"));
        return Thermal.foehnWarming(g.get("base_m"), g.get("ridge_m"), rates);
    }

    private static double blueTop(Given g) {
        return Thermal.blueTop(
                g.si("surface_C", "°C"),
                g.si("around_C", "°C"),
                g.si("lapse_K_km", "K/km"),
                g.si("dalr_K_km", "K/km"));
    }

    private static double trigger(Given g) {
        double temperature =
                Thermal.trigger(
                        g.si("inversion_C", "°C"), g.get("height_m"), g.si("dalr_K_km", "K/km"));
        return temperature - 273.15;
    }

    private static double arrival(Given g) {
        return Storm.frontArrival(g.si("distance_km", "km"), g.si("front_kmh", "km/h"));
    }

    private static double frontMarginMin(Given g) {
        double margin =
                Storm.marginBeforeFront(
                        g.si("distance_km", "km"),
                        g.si("front_kmh", "km/h"),
                        g.get("height_m"),
                        g.get("sink_ms"));
        return margin / 60;
    }
}
