package org.groundline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.math.BigDecimal;
import java.util.stream.Stream;

class UnitsTest {
    /// Exact by definition of the units; the others are printed to the digits shown.
    @ParameterizedTest(name = "{0} {1} = {2} {3}")
    @CsvSource(
            textBlock =
                    """
                    1,    NM,     1852,    m,    0
                    1000, ft,     304.8,   m,    0
                    1,    kt,     1.852,   km/h, 0
                    10,   m/s,    36,      km/h, 0
                    500,  ft/min, 2.54,    m/s,  0
                    15,   °C,     288.15,  K,    0
                    300,  K,      26.85,   °C,   0
                    5.5,  %,      0.055,   '',   0
                    -40,  °F,     -40,     °C,   1e-28
                    85,   °F,     29.444,  °C,   0.0005
                    27,   ft/hPa, 8.2296,  m/hPa, 0
                    29.92, inHg,  1013.2,  hPa,  0.05
                    1,    kt,     0.514444, m/s, 0.0000005
                    10,   m/s,    22.369,  mph,  0.0005
                    20,   mph,    32.187,  km/h, 0.0005
                    25,   km/h,   6.9444,  m/s,  0.00005
                    180,  °,      3.14159265, rad, 0.000000005
                    """)
    void unitsConvert(String value, String unit, String expected, String target, String tolerance) {
        var converted = Units.get(unit).convert(new BigDecimal(value), Units.get(target));
        assertThat(converted)
                .isCloseTo(new BigDecimal(expected), within(new BigDecimal(tolerance)));
    }

    @Test
    void convertingThereAndBackIsTheIdentity() {
        for (Unit unit : Units.all()) {
            assertThat(unit.fromSi(unit.toSi(37.5)))
                    .as(unit.toString())
                    .isCloseTo(37.5, within(1e-12));
        }
    }

    @Test
    void doublesAndDecimalsConvertAlike() {
        for (Unit unit : Units.all()) {
            for (Unit other : Units.all()) {
                if (unit.dimension().equals(other.dimension())) {
                    double exact = unit.convert(new BigDecimal("12.5"), other).doubleValue();
                    assertThat(other.fromSi(unit.toSi(12.5)))
                            .as("%s in %s", unit, other)
                            .isCloseTo(exact, within(1e-12 * Math.max(300, Math.abs(exact))));
                }
            }
        }
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "km/h, km/h",
        "kmh, km/h",
        "KM/H, km/h",
        "km / h, km/h",
        "knots, kt",
        "fpm, ft/min",
        "KG, kg",
        "m2, m²",
        "kg/m^3, kg/m³",
        "deg, °",
        "nm, NM",
        "K, K",
        "kilo, kg"
    })
    void unitsAreFoundAsPeopleTypeThem(String typed, String symbol) {
        assertThat(Units.get(typed).symbol()).isEqualTo(symbol);
    }

    @Test
    void aUnitOutsideTheTableIsNotFound() {
        assertThat(Units.find("furlong")).isEmpty();
    }

    @Test
    void noSpellingMeansTwoUnits() {
        var spellings =
                Units.all().stream()
                        .flatMap(u -> Stream.concat(Stream.of(u.symbol()), u.spellings().stream()))
                        .toList();
        assertThat(spellings).doesNotHaveDuplicates();
    }

    @Test
    void anotherDimensionIsRefusedWithBothNamed() {
        assertThatThrownBy(() -> Units.get("km").convert(BigDecimal.ONE, Units.get("kg")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a length (m)")
                .hasMessageContaining("a mass (kg)");
    }

    @Test
    void numbersArePrintedForPeople() {
        assertThat(Units.get("km/h").print(new BigDecimal("38"))).isEqualTo("38\u202Fkm/h");
        assertThat(Units.get("°").print(new BigDecimal("30"))).isEqualTo("30°");
        assertThat(Units.NUMBER.print(new BigDecimal("8.5"))).isEqualTo("8.5");
        assertThat(Units.CELSIUS.print(new BigDecimal("-5"))).isEqualTo("−5\u202F°C");
    }
}
