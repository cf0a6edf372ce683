package org.groundline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.measure.Rounding.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.math.BigDecimal;

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

    @Test
    void aStepOfZeroIsRefused() {
        assertThatThrownBy(() -> new Rounding(BigDecimal.ZERO, Side.UP))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0");
    }
}
