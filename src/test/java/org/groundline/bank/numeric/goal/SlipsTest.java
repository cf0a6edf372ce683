package org.groundline.bank.numeric.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.groundline.bank.numeric.posed.Cause;
import org.groundline.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipsTest {
    /// Exact factors: 1 kt = 1852 m/h, 1 ft = 0.3048 m, 1 lb = 0.453 592 37 kg, 0 °C = 273.15 K
    /// (definitions; BIPM, *The International System of Units*, 9th ed., 2019, for the last; the
    /// others are the international nautical mile, foot and pound).
    @ParameterizedTest(name = "{0} {1} is {2} {3}")
    @CsvSource({
        "36, km/h, 10, m/s",
        "18.52, km/h, 10, kt",
        "10, m/s, 36, km/h",
        "304.8, m, 1000, ft",
        "3000, m, 3, km",
        "1013.25, hPa, 101325, Pa",
        "90, min, 1.5, h",
        "45.359237, kg, 100, lb",
        "15, °C, 288.15, K",
        "180, °, 3.14159265358979, rad"
    })
    void theRightValueInAnotherUnitIsASlip(
            double answer, String asked, double given, String other) {
        var slip =
                Slips.at(Units.get(asked)).units().stream()
                        .filter(s -> s.cause().equals(new Cause.OtherUnit(other, asked)))
                        .findFirst()
                        .orElseThrow();
        assertThat(slip.of(answer)).isCloseTo(given, within(1e-9 * given));
    }

    @Test
    void aPlainNumberHasNoOtherUnit() {
        assertThat(Slips.at(Units.NUMBER).units()).isEmpty();
        assertThat(Slips.at(Units.NUMBER).powers()).hasSize(6);
    }
}
