package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.theory.Refused.assertRefused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;

/// What has no answer: polars that are none, turns without bank, winds that hold one back.
class FlightRefusalsTest {
    private static final Polar POLAR = new Polar(0.035, -0.63, 3.93);

    @ParameterizedTest(name = "a {0}, b {1}, c {2}: {3}")
    @CsvSource({
        "0, -0.63, 3.93, a of the polar",
        "-0.035, -0.63, 3.93, a of the polar",
        "NaN, -0.63, 3.93, a of the polar",
        "0.035, 0, 3.93, b of the polar",
        "0.035, 0.63, 3.93, b of the polar",
        "0.035, NaN, 3.93, b of the polar",
        "0.035, -0.63, 0, c of the polar",
        "0.035, -0.63, -3.93, c of the polar",
        "0.035, -0.63, 2.835, lowest sink rate",
        "0.035, -0.63, 2, lowest sink rate"
    })
    void aCurveThatIsNoPolarIsRefused(double a, double b, double c, String quantity) {
        assertRefused(() -> new Polar(a, b, c), quantity, "must be");
    }

    @Test
    void belowTheSpeedOfMinimumSinkThePolarIsNotExtrapolated() {
        assertRefused(() -> POLAR.sinkRate(8.9), "airspeed (m/s)", "at least that of minimum sink");
        assertRefused(
                () -> POLAR.sinkRateInTurn(10, Math.PI / 3),
                "airspeed (m/s)",
                "at least that of minimum sink");
        assertRefused(
                () -> POLAR.speedToFlyUpTo(8.9, 0, 0),
                "highest speed (m/s)",
                "at least that of minimum sink");
        assertRefused(
                () -> POLAR.speedBetweenThermalsUpTo(8.9, 1, 0),
                "highest speed (m/s)",
                "at least that of minimum sink");
    }

    @Test
    void theSpeedOfMinimumSinkItselfIsFlown() {
        assertThat(POLAR.sinkRate(POLAR.minimumSinkSpeed())).isPositive();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.1, -3, Double.NaN})
    void airThatCarriesTheWingHasNoSpeedToFly(double airSink) {
        assertRefused(() -> POLAR.speedToFly(0, airSink), "sink of the air", "" + airSink);
        assertRefused(() -> POLAR.bestRatioOverGround(0, airSink), "sink of the air", "" + airSink);
        assertRefused(
                () -> POLAR.speedBetweenThermals(0, airSink), "sink of the air", "" + airSink);
    }

    @ParameterizedTest
    @ValueSource(doubles = {14, 15, Double.POSITIVE_INFINITY})
    void aWindAsStrongAsTheHighestSpeedIsNotFlownAgainst(double headwind) {
        assertRefused(() -> POLAR.speedToFlyUpTo(14, headwind, 0), "headwind (m/s)", "" + headwind);
    }

    @Test
    void aPolarTakesThreeDifferentAirspeeds() {
        var slow = new Polar.Point(9, 1.1);
        var fast = new Polar.Point(12, 1.5);
        assertRefused(() -> Polar.fitted(List.of(slow, fast)), "number of points", "is 2");
        assertRefused(() -> Polar.fitted(List.of(slow, fast, slow)), "different airspeeds", "is 2");
        assertRefused(() -> Polar.fitted(List.of(slow, slow, slow)), "different airspeeds", "is 1");
    }

    @ParameterizedTest(name = "sink rates {0}, {1}, {2} at 9, 11 and 13 m/s: {3}")
    @CsvSource({
        "1.1, 1.6, 1.8, a of the polar",
        "1.1, 1.2, 1.3, a of the polar",
        "1, 0.05, 0.2, lowest sink rate",
        "3, 3.99, 5, b of the polar"
    })
    void pointsOfNoPolarAreRefused(double slow, double middle, double fast, String quantity) {
        var points =
                List.of(
                        new Polar.Point(9, slow),
                        new Polar.Point(11, middle),
                        new Polar.Point(13, fast));
        assertRefused(() -> Polar.fitted(points), quantity, "must be");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.5, Math.PI / 2, Double.NaN})
    void aTurnHasABankBelowARightAngle(double bank) {
        assertRefused(() -> Turn.radius(10, bank), "bank (rad)", "must be");
        assertRefused(() -> Turn.rate(10, bank), "bank (rad)", "must be");
        assertRefused(() -> Turn.time(10, bank), "bank (rad)", "must be");
        assertRefused(() -> SameAngleTurn.radius(10, bank), "bank (rad)", "must be");
        assertRefused(() -> SameAngleTurn.heightPerTurn(10, 1, bank), "bank (rad)", "must be");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, 0, -2, Double.NaN})
    void aLoadFactorBelowOneHasNoBank(double loadFactor) {
        assertRefused(() -> Turn.bankAtLoadFactor(loadFactor), "load factor", "" + loadFactor);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e-300})
    void whatMustBePositiveIsRefusedOtherwise(double value) {
        assertRefused(() -> Glide.ratioFlown(1000, value), "height lost (m)", "above zero");
        assertRefused(() -> Glide.sinkRate(10, value), "glide ratio", "above zero");
        assertRefused(() -> Glide.speedByHalfHeadwindRule(value, 5), "best glide", "above zero");
        assertRefused(() -> Loading.aspectRatio(value, 26), "span (m)", "above zero");
        assertRefused(() -> Loading.aspectRatioByChord(12, value), "mean chord", "above zero");
        assertRefused(() -> Loading.speedAtMassByRule(10, value, 90), "mass (kg)", "above zero");
        assertRefused(() -> Loading.speedAtArea(10, 25, value), "new area (m²)", "above zero");
        assertRefused(() -> Turn.highestLoadFactor(10, value), "stall speed", "above zero");
        assertRefused(() -> Turn.bankForRadius(10, value), "radius (m)", "above zero");
        assertRefused(() -> Turn.spiralLoadFactor(14, value), "radius (m)", "above zero");
        assertRefused(() -> Reserve.areaNeeded(100, value, 1.6, 1.2), "sink rate", "above zero");
        assertRefused(() -> Reserve.dragCoefficient(100, 5, value, 1.2), "area", "above zero");
        assertRefused(() -> Forces.weight(value), "mass (kg)", "above zero");
        assertRefused(() -> Forces.force(value, 25, 10, 1.2), "coefficient", "above zero");
        assertRefused(() -> Forces.coefficient(900, 25, value, 1.2), "airspeed", "above zero");
        assertRefused(() -> Forces.ratio(900, value), "drag (N)", "above zero");
        assertRefused(() -> Lines.load(value, 4), "mass (kg)", "above zero");
        assertRefused(() -> Lines.strengthRequired(value), "all-up mass", "above zero");
        assertRefused(() -> Soaring.drift(600, value, 4), "climb (m/s)", "above zero");
        assertRefused(() -> Soaring.crossCountrySpeed(12, 1, value), "climb", "above zero");
        assertRefused(() -> POLAR.crossCountrySpeed(value), "climb (m/s)", "above zero");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatMayBeZeroIsRefusedBelow(double value) {
        assertRefused(() -> Glide.speedByHalfHeadwindRule(10, value), "headwind", "zero or above");
        assertRefused(() -> Turn.spiralLoadFactor(value, 6), "speed (m/s)", "zero or above");
        assertRefused(() -> Reserve.speedAfterFall(value), "height (m)", "zero or above");
        assertRefused(() -> Reserve.heightUsed(15, 2, 2, value), "open (s)", "zero or above");
        assertRefused(() -> Reserve.heightUsedWithLoss(15, 2, value), "loss", "zero or above");
        assertRefused(() -> Launch.penetration(10, value), "gust (m/s)", "zero or above");
        assertRefused(() -> Launch.towLoadFactor(90, value, 1), "pull (N)", "zero or above");
        assertRefused(() -> new Circuit(100, value, 100), "base leg (m)", "zero or above");
        assertRefused(
                () -> new Circuit(100, 80, 100).heightUsed(10, value, 1), "wind", "zero or above");
        assertRefused(() -> Soaring.netSink(3, value), "updraft (m/s)", "zero or above");
        assertRefused(() -> POLAR.speedBetweenThermals(value, 0), "climb", "zero or above");
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 15})
    void aWindAsStrongAsTheAirspeedHoldsBackEverybody(double wind) {
        assertRefused(() -> Launch.penetration(10, wind), "gust (m/s)", "below the airspeed");
        assertRefused(() -> Launch.runSpeed(10, 1.225, wind), "headwind", "below the airspeed");
        assertRefused(
                () -> new Circuit(100, 80, 100).heightUsed(10, wind, 1.2),
                "headwind (m/s)",
                "below the airspeed");
        assertRefused(
                () -> Circuit.downwindEnergyRatio(10, wind), "headwind", "below the airspeed");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.6, Double.NaN})
    void aTowLinePullsDownwards(double angle) {
        assertRefused(() -> Launch.towLoadFactor(90, 800, angle), "angle of the line", "" + angle);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.6, 1.6, Double.NaN})
    void anglesBeyondTheVerticalAreRefused(double angle) {
        assertRefused(() -> Forces.attitude(angle, 0.1), "angle of attack (rad)", "" + angle);
        assertRefused(() -> Forces.angleOfAttack(0.1, angle), "glide angle (rad)", "" + angle);
    }

    @Test
    void noSpeedIsSoHighThatNoPressureIsLeft() {
        assertRefused(
                () -> Forces.pressureAtSpeed(100_000, 1.2, 0, 500), "new speed (m/s)", "500.0");
    }
}
