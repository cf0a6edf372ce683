package org.groundline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.groundline.chance.SeededDraw;
import org.groundline.measure.Rounding.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.math.BigDecimal;
import java.math.MathContext;

class RoundingTest {
    @ParameterizedTest(name = "{0} to {1}, {2}: {3}")
    @CsvSource({
        "3194.4, 50, DOWN, 3150",
        "612.9, 10, UP, 620",
        "5.507, 0.01, NEAREST, 5.51",
        "4, 0.1, NEAREST, 4.0",
        "0.05, 0.1, NEAREST, 0.1",
        "-1.2, 1, DOWN, -2",
        "-1.2, 1, UP, -1",
        "1.04, 0.05, NEAREST, 1.05"
    })
    void aValueIsRoundedToItsSide(double value, BigDecimal step, Side side, BigDecimal rounded) {
        assertThat(new Rounding(step, side).round(value)).isEqualTo(rounded);
    }

    @Test
    void theNoiseOfDoublesIsNotRoundedUp() {
        var up = new Rounding(BigDecimal.TEN, Side.UP);
        assertThat(up.round(3000.0000000000005)).isEqualByComparingTo("3000");
        assertThat(up.round(3000.0001)).isEqualByComparingTo("3010");
    }

    @ParameterizedTest(name = "{0} to {1} digits: {2}")
    @CsvSource({
        "3195.78947368421, 5, 3195.8",
        "3195.78947368421, 12, 3195.78947368",
        "0.000123456, 3, 0.000123",
        "-0.05, 2, -0.05",
        "4000, 2, 4000",
        "123456, 3, 123000",
        "0, 4, 0",
        "9.9999, 3, 10",
        "0.1, 12, 0.1",
        "1e-20, 3, 0.00000000000000000001",
        "1e15, 12, 1000000000000000"
    })
    void aValueIsShortenedToItsFirstDigits(double value, int digits, BigDecimal shortened) {
        assertThat(Rounding.significant(value, digits)).isEqualTo(shortened);
    }

    /// The quick way by long numbers against the exact one; a value in the middle between two may
    /// go to either, so that the last digit counts as tolerance.
    @Test
    void shorteningAgreesWithExactDecimals() {
        var draw = new SeededDraw(11);
        for (int i = 0; i < 100_000; i++) {
            double value = (draw.below(2_000_000_000) - 1e9) * Math.pow(10, draw.below(20) - 14);
            var exact = new BigDecimal(value).round(new MathContext(12));
            assertThat(Rounding.trusted(value)).isCloseTo(exact, within(exact.ulp()));
        }
    }

    @Test
    void whatIsNotFiniteStandsForNoDecimal() {
        assertThatThrownBy(() -> Rounding.trusted(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    @Test
    void aStepOfZeroIsRefused() {
        assertThatThrownBy(() -> new Rounding(BigDecimal.ZERO, Side.UP))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0");
    }
}
