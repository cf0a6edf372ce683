package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RefusalsTest {
    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 11_000.1, Double.NaN, Double.POSITIVE_INFINITY})
    void anAltitudeOutsideTheTroposphereIsRefused(double altitude) {
        assertRefused(() -> StandardAtmosphere.density(altitude), "altitude (m)", "11000");
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 12, Double.POSITIVE_INFINITY, Double.NaN})
    void aWindNoWeakerThanTheAirspeedHasNoGroundSpeed(double headwind) {
        assertRefused(() -> Glide.groundSpeed(10, headwind), "headwind (m/s)", "" + headwind);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.2, -2, Double.NaN})
    void airThatCarriesTheGliderHasNoDescent(double airSink) {
        assertRefused(() -> Glide.descentRate(1.2, airSink), "sink of the air (m/s)", "" + airSink);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatMustBePositiveIsRefusedOtherwise(double value) {
        assertRefused(() -> Glide.ratio(value, 1.2), "airspeed (m/s)", "above zero");
        assertRefused(() -> Glide.ratio(10, value), "sink rate (m/s)", "above zero");
        assertRefused(() -> Glide.angle(value), "glide ratio", "above zero");
        assertRefused(() -> Loading.wingLoading(95, value), "area (m²)", "above zero");
        assertRefused(() -> Loading.speedAtMass(10, 90, value), "new mass (kg)", "above zero");
        assertRefused(() -> Loading.speedInAir(10, value, 1), "density (kg/m³)", "above zero");
        assertRefused(() -> Turn.stallSpeed(7, value), "load factor", "above zero");
        assertRefused(() -> Reserve.sinkRate(100, 33, value, 1.2), "drag", "above zero");
        assertRefused(() -> Reserve.equalJumpHeight(value), "sink rate (m/s)", "above zero");
        assertRefused(() -> Reserve.impactEnergy(value, 5), "mass (kg)", "above zero");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatMayBeZeroIsRefusedBelow(double value) {
        assertRefused(() -> Glide.distance(value, 10, 1), "height (m)", "zero or above");
        assertRefused(() -> Glide.time(value, 1), "height (m)", "zero or above");
        assertRefused(() -> Glide.heightNeeded(value, 10, 1, 100), "distance (m)", "zero or above");
        assertRefused(() -> Glide.heightNeeded(900, 10, 1, value), "reserve (m)", "zero or above");
        assertRefused(() -> Loading.allUpMass(80, value, 5, 5), "wing (kg)", "zero or above");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Math.PI / 2, 2, Double.NaN})
    void aBankOfARightAngleHasNoLoadFactor(double bank) {
        assertRefused(() -> Turn.loadFactor(bank), "bank (rad)", "below π/2");
    }

    @Test
    void aTailwindOfAnyStrengthIsFlown() {
        assertThat(Glide.groundSpeed(10, -15)).isEqualTo(25);
    }

    private static void assertRefused(ThrowingCallable call, String quantity, String rule) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(quantity)
                .hasMessageContaining(rule);
    }
}
