package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Drawings of the air: the standard atmosphere, the cloud base, the altimeter.
class AirTest {
    /// ICAO standard atmosphere at 2000 m of geopotential altitude, as published tables have it.
    /// The axes span 400 to 1100 hPa and 0 to 6000 m.
    @Test
    void theReadingLiesOnTheCurveAtThePublishedPressure() {
        var svg = Solution.of("pressure-profile", "altitude=2000 m").drawn();
        var axes = svg.points("axes");
        var point = svg.dot("reading");

        double across = (point.x() - axes.get(1).x()) / (axes.get(2).x() - axes.get(1).x());
        double up = (axes.get(1).y() - point.y()) / (axes.get(1).y() - axes.get(0).y());
        assertThat(400 + 700 * across).isCloseTo(794.95, within(0.05));
        assertThat(6000 * up).isCloseTo(2000, within(0.5));
        assertThat(svg.texts()).contains("795\u202FhPa", "2000\u202Fm");
        assertThat(svg.points("curve")).contains(point);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"pressure-profile", "temperature-profile", "density-profile"})
    void aStemHasNoNumberAtItsAxes(String kind) {
        var svg = Solution.of(kind, "altitude=2000 m").stemAsking(kind.split("-")[0]);

        assertThat(svg.texts()).noneMatch(text -> text.matches("−?[\\d.]+"));
        assertThat(svg.part("grid")).isEmpty();
    }

    /// 9.8 K for each 1000 m along the dry adiabat, to the percent; the base at 125 m for each
    /// kelvin of spread: Lawrence, Bulletin of the American Meteorological Society 86(2), 2005,
    /// page 225.
    @ParameterizedTest(name = "{0} and {1} °C")
    @CsvSource({"24, 12", "20, 17", "30, 6"})
    void temperatureAndDewPointMeetAtTheCloudBase(double temperature, double dewPoint) {
        var svg =
                Solution.of(
                                "cloud-base",
                                "temperature=" + temperature + " °C",
                                "dew-point=" + dewPoint + " °C")
                        .drawn();
        var adiabat = svg.span("dry-adiabat");
        var dewPointLine = svg.span("dew-point-line");

        assertThat(adiabat.to()).isEqualTo(dewPointLine.to());
        assertThat(adiabat.to().y()).isEqualTo(svg.span("base-level").from().y());
        double kelvin = (adiabat.from().x() - dewPointLine.from().x()) / (temperature - dewPoint);
        double base = 125 * (temperature - dewPoint);
        assertThat(-adiabat.way().x() / kelvin)
                .isCloseTo(9.8 * base / 1000, within(0.01 * base / 100));
        assertThat(svg.span("cloud-base").length()).isCloseTo(-adiabat.way().y(), within(0.02));
    }

    @Test
    void aCloudBaseOfTheStemsOwnRuleIsTaken() {
        var svg =
                Solution.of(
                                "cloud-base",
                                "temperature=24 °C",
                                "dew-point=12 °C",
                                "cloud-base=4800 ft")
                        .drawn();

        assertThat(svg.texts()).contains("cloud base 1463.04\u202Fm");
    }

    @Test
    void aCloudBaseByTheDryRateAloneIsRefused() {
        var wrong =
                Solution.of(
                        "cloud-base", "temperature=24 °C", "dew-point=16 °C", "cloud-base=816 m");

        assertThatThrownBy(wrong::drawn).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPressureSetTooHighLiesBelowTheSeaAndShowsTooHigh() {
        var svg = altimeter(1023, 1011).drawn();

        assertThat(svg.span("setting").from().y()).isGreaterThan(svg.span("sea-level").from().y());
        assertThat(svg.arrow("indicated-altitude").length())
                .isGreaterThan(svg.arrow("true-altitude").length());
        assertThat(svg.texts()).contains("too high by", "true altitude");
    }

    @Test
    void aPressureSetTooLowLiesAboveTheSeaAndShowsTooLow() {
        var svg = altimeter(1003, 1011).drawn();

        assertThat(svg.span("setting").from().y()).isLessThan(svg.span("sea-level").from().y());
        assertThat(svg.arrow("indicated-altitude").length())
                .isLessThan(svg.arrow("true-altitude").length());
        assertThat(svg.texts()).contains("too low by");
    }

    @Test
    void aGliderBelowTheSeaIsRefused() {
        var solution =
                Solution.of(
                        "altimeter-setting",
                        "setting=1023 hPa",
                        "correct-setting=1011 hPa",
                        "indicated-altitude=50 m");

        assertThatThrownBy(solution::drawn)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("true altitude");
    }

    @Test
    void aStemDoesNotShowOnWhichSideOfTheSeaTheSettingLies() {
        var svg = altimeter(1023, 1011).stemAsking("true-altitude");

        assertThat(svg.part("setting")).isEmpty();
        assertThat(svg.part("indicated-altitude")).isEmpty();
        assertThat(svg.texts()).contains("set 1023\u202FhPa", "1500\u202Fm", "?");
    }

    private static Solution altimeter(double set, double correct) {
        return Solution.of(
                "altimeter-setting",
                "setting=" + set + " hPa",
                "correct-setting=" + correct + " hPa",
                "indicated-altitude=1500 m");
    }
}
