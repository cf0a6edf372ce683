package org.groundline.bank.numeric.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.groundline.chance.SeededDraw;
import org.groundline.measure.Dimension;
import org.groundline.theory.StandardAtmosphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.Map;

class FormulaTest {
    private static final Scope SCOPE =
            new Scope(Map.of())
                    .with("airspeed", Dimension.SPEED)
                    .with("wind", Dimension.SPEED)
                    .with("height", Dimension.LENGTH)
                    .with("mass", Dimension.MASS)
                    .with("bank", Dimension.ANGLE)
                    .with("ratio", Dimension.NUMBER)
                    .with("e", Dimension.NUMBER)
                    .with("pi", Dimension.NUMBER);

    /// airspeed 10 m/s, wind 4 m/s, height 600 m, mass 90 kg, bank 60°, ratio 8, e 5, pi 7.
    private static final double[] VALUES = {10, 4, 600, 90, Math.PI / 3, 8, 5, 7};

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '=',
            textBlock =
                    """
                    1 + 2 * 3                 = 7
                    (1 + 2) * 3               = 9
                    2 - 3 - 4                 = -5
                    48 / 4 / 3                = 4
                    -2 ^ 2                    = -4
                    2 ^ 3 ^ 2                 = 512
                    2 ^ (-1)                  = 0.5
                    1.5e3 + .5                = 1500.5
                    - - 3                     = 3
                    height * ratio * (airspeed - wind) / airspeed = 2880
                    sqrt(airspeed ^ 2)        = 10
                    (airspeed ^ 2) ^ 0.5      = 10
                    airspeed ^ 1.5 / airspeed ^ 0.5 = 10
                    abs(wind - airspeed)      = 6
                    min(wind, airspeed) + max(wind, airspeed) = 14
                    1 / cos(bank)             = 2
                    sin(30 [°]) + tan(45 [°]) = 1.5
                    asin(0.5) / 1 [°]         = 30
                    atan(1) / 1 [°]           = 45
                    ln(exp(2))                = 2
                    36 [km/h]                 = 10
                    100 / 36 [km/h] * 1 [m/s] = 10
                    air_density(0 [m])        = 1.225
                    rho0                      = 1.225
                    load_factor(bank)         = 2
                    ground_speed(airspeed, wind) = 6
                    e + pi                    = 12
                    """)
    void aFormulaComputesInSi(String formula, double value) {
        assertThat(Formula.read(formula, SCOPE).value(VALUES)).isCloseTo(value, within(1e-6));
    }

    @Test
    void gIsStandardGravity() {
        var weight = Formula.read("mass * g", SCOPE);
        assertThat(weight.dimension()).isEqualTo(Dimension.FORCE);
        assertThat(weight.value(VALUES)).isEqualTo(90 * StandardAtmosphere.GRAVITY);
    }

    @Test
    void aFormulaKnowsItsDimension() {
        assertDimension("height / airspeed", Dimension.TIME);
        assertDimension("airspeed ^ 2 / g", Dimension.LENGTH);
        assertDimension("sqrt(2 * mass * g / (rho0 * 30 [m²]))", Dimension.SPEED);
        assertDimension("reserve_sink_rate(mass, 30 [m²], 1.5, rho0)", Dimension.SPEED);
        assertDimension("mass * airspeed ^ 2 / 2", Dimension.ENERGY);
        assertDimension("glide_angle(ratio)", Dimension.ANGLE);
        assertDimension("ratio ^ ratio", Dimension.NUMBER);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    height * (height + wind) | `height + wind` adds a length (m) and a speed (m/s)
                    airspeed - 3             | `airspeed - 3` takes a plain number from a speed (m/s)
                    min(wind, height)        | `min(wind, height)` compares a speed (m/s) with a length (m)
                    cos(ratio)               | in `cos(ratio)` the angle `ratio` is a plain number, not an angle
                    air_density(wind)        | the altitude `wind` is a speed (m/s), not a length (m)
                    ln(height)               | the value `height` is a length (m), not a plain number
                    2 ^ height               | the exponent in `2 ^ height` is a length (m)
                    height ^ ratio           | raises a length (m) to a power that is not fixed
                    height ^ 0.3             | raises a length (m) to a power that is not fixed
                    height ^ 1e9             | raises a length (m) to a power that is not fixed
                    """)
    void mixedDimensionsAreFoundWhereTheyAre(String formula, String problem) {
        assertThatThrownBy(() -> Formula.read(formula, SCOPE))
                .isInstanceOf(FormulaFault.class)
                .hasMessageContaining(problem);
    }

    @ParameterizedTest(name = "`{0}`")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    speed * 2          | no value called `speed`
                    warp(height)       | no function `warp`
                    air_density()      | gives 0 values
                    sqrt(height, wind) | gives 2 values
                    min(wind wind)     | something is missing
                    min(wind,)         | something is missing
                    min(,wind)         | something is missing
                    min(wind +, wind)  | something is missing
                    height *           | something is missing
                    * height           | something is missing
                    (height            | cannot be read
                    height)            | cannot be read
                    2 height           | something is missing
                    2height            | cannot be read
                    height (2)         | something is missing
                    1.2.3              | cannot be read
                    0x1f               | is no number
                    Height             | `H` has no meaning
                    PI                 | `P` has no meaning
                    Q0                 | `Q` has no meaning
                    height % 2         | `%` has no meaning
                    !height            | `!` has no meaning
                    "a"                | `"` has no meaning
                    height[0]          | a unit in brackets does not follow a number
                    5 [furlong]        | [furlong] is no unit
                    height < wind      | `<` has no meaning here
                    height == height   | `==` has no meaning here
                    1e999              | is no number
                    ( )                | cannot be read
                    sqrt(-/ratio)      | something is missing
                    2 + * 3            | something is missing
                    """)
    void whatIsNoFormulaIsRefusedWithAReason(String formula, String problem) {
        assertThatThrownBy(() -> Formula.read(formula, SCOPE))
                .isInstanceOfSatisfying(
                        FormulaFault.class,
                        fault -> {
                            assertThat(fault.problem()).contains(problem);
                            assertThat(fault.remedy()).isNotBlank();
                        });
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = ';',
            textBlock =
                    """
                    wind < 0.6 * airspeed                    ; true
                    wind < 10 [km/h]                         ; false
                    wind <= 4 [m/s]                          ; true
                    wind >= airspeed || height > 500 [m]     ; true
                    wind >= airspeed && height > 500 [m]     ; false
                    (wind > airspeed || ratio > 7) && e < 6  ; true
                    """)
    void aConditionComparesQuantities(String text, boolean holds) {
        assertThat(Formula.readCondition(text, SCOPE).holds(VALUES)).isEqualTo(holds);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"wind", "wind + wind", "wind == airspeed", "1 < 2 < 3", "wind < height"})
    void whatIsNoConditionIsRefused(String text) {
        assertThatThrownBy(() -> Formula.readCondition(text, SCOPE))
                .isInstanceOf(FormulaFault.class);
    }

    @Test
    void aFormulaMayBeNestedSixtyFourDeepAndNoDeeper() {
        assertThat(Formula.read("-".repeat(63) + "ratio", SCOPE).value(VALUES)).isEqualTo(-8);
        assertThatThrownBy(() -> Formula.read("-".repeat(64) + "ratio", SCOPE))
                .isInstanceOf(FormulaFault.class)
                .hasMessageContaining("deeper than 64");
    }

    @Test
    void aFormulaMayHaveFiveHundredCharactersAndNoMore() {
        assertThat(Formula.read("1".repeat(300) + " ".repeat(200), SCOPE).isConstant()).isTrue();
        assertThatThrownBy(() -> Formula.read(" ".repeat(500) + "1", SCOPE))
                .isInstanceOf(FormulaFault.class)
                .hasMessageContaining("501 characters");
    }

    @Test
    void everyFunctionIsListedWithItsParameters() {
        assertThat(Formula.functions())
                .contains("load_factor(bank)", "sqrt(value)", "air_density(altitude)")
                .isSorted();
    }

    /// Texts made of a formula's own pieces: whatever they are, they are read or refused, and what
    /// is read reads again from its own print to the same value.
    @Test
    void aHeapOfPiecesIsReadOrRefusedButNothingElseHappens() {
        String[] pieces = {
            "height",
            "wind",
            "ratio",
            "2",
            ".5",
            "1e3",
            "3 [km/h]",
            "+",
            "-",
            "*",
            "/",
            "^",
            "(",
            ")",
            ",",
            "<",
            "&&",
            "sqrt(",
            "min(",
            "cos(",
            " ",
            "||",
            "[m]",
            "e"
        };
        var draw = new SeededDraw(7);
        int read = 0;
        for (int i = 0; i < 200_000; i++) {
            var text = new StringBuilder();
            int length = 1 + draw.below(9);
            for (int k = 0; k < length; k++) {
                text.append(pieces[draw.below(pieces.length)]);
            }
            read += isReadTheSameFromItsPrint(text.toString()) ? 1 : 0;
        }
        assertThat(read).isGreaterThan(1_000);
    }

    private static boolean isReadTheSameFromItsPrint(String text) {
        Expression formula;
        try {
            formula = Formula.read(text, SCOPE);
        } catch (FormulaFault fault) {
            return false;
        }
        assertThat((Double) Formula.read(formula.toString(), SCOPE).value(VALUES))
                .as(text)
                .isEqualTo((Double) formula.value(VALUES));
        return true;
    }

    private static void assertDimension(String formula, Dimension dimension) {
        assertThat(Formula.read(formula, SCOPE).dimension()).as(formula).isEqualTo(dimension);
    }
}
