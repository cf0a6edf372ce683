package org.groundline.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.measure.Reading.Read;
import org.groundline.measure.Reading.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.math.BigDecimal;

class TypedNumberTest {
    private static final Unit METRE = Units.get("m");

    @ParameterizedTest(name = "“{0}” is {1} m")
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "5,3 km|5300",
                "5.3km|5300",
                "5300|5300",
                "  5300  |5300",
                "5 300 m|5300",
                "5\u202F300\u202Fm|5300",
                "5\u00A0300 m|5300",
                "1’200 m|1200",
                "12 345 678.9|12345678.9",
                "1.200.300|1200300",
                "1.200,5|1200.5",
                "1,200.5|1200.5",
                "1234.567|1234.567",
                "0.200|0.200",
                ".5|0.5",
                "-12|-12",
                "−12 m|-12",
                "+12 m|12",
                "12 m.|12",
                "1000 ft|304.8",
                "0,3 NM|555.6",
                "½|0.5",
                "¼ m|0.25",
                "¾|0.75",
                "⅛|0.125",
                "⅜|0.375",
                "⅝|0.625",
                "⅞|0.875",
                "1½|1.5",
                "1 ½ km|1500",
                "-1½|-1.5",
                "1200¼|1200.25"
            })
    void theUsualWaysToTypeANumberAreRead(String typed, BigDecimal value) {
        for (var convention : DecimalConvention.values()) {
            assertThat(read(typed, METRE, convention).value()).isEqualByComparingTo(value);
        }
    }

    @ParameterizedTest(name = "{0} with a decimal {1} is {2}, echoed {3}")
    @CsvSource({
        "1.200, DOT,   1.2,  1.200 m",
        "1.200, COMMA, 1200, 1200 m",
        "'1,200', DOT, 1200, 1200 m",
        "'1,200', COMMA, 1.2, '1,200 m'"
    })
    void whatCouldBeTwoNumbersIsReadByTheLanguageAndEchoed(
            String typed, DecimalConvention convention, BigDecimal value, String echo) {
        var read = read(typed, METRE, convention);
        assertThat(read.value()).isEqualByComparingTo(value);
        assertThat(read.echo()).isEqualTo(echo.replace(' ', '\u202F'));
    }

    @ParameterizedTest(name = "{0} with a decimal {1} is {2} or {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1.200|DOT|1.2 m = 1.2000 m|1200 m = 1200 m",
                "1.200|COMMA|1200 m = 1200 m|1,2 m = 1,2000 m",
                "1,234|DOT|1234 m = 1234 m|1.234 m = 1.2340 m",
                "-2.500 km|DOT|−2.5 km = −2.5000 km|−2500 km = −2500 km",
                "1.000|DOT|1 m = 1 m|1000 m = 1000 m"
            })
    void whatCouldBeTwoNumbersIsOfferedInBothWaysThatAreCertain(
            String typed, DecimalConvention convention, String taken, String other) {
        var ways = TypedNumber.findWays(typed, METRE, convention, Sign.COUNTS);
        assertThat(ways)
                .extracting(way -> (way.label() + " = " + way.text()).replace('\u202F', ' '))
                .containsExactly(taken, other);
        for (var way : ways) {
            assertThat(TypedNumber.findWays(way.text(), METRE, convention, Sign.COUNTS)).isEmpty();
        }
        assertThat(read(ways.getFirst().text(), METRE, convention).value())
                .isEqualByComparingTo(read(typed, METRE, convention).value());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1200", "1.2", "0.200", "1.200,5", "1 200", "1.2000", "x", "", "1½"})
    void whatIsOneNumberOrNoneHasNoOtherWay(String typed) {
        assertThat(TypedNumber.findWays(typed, METRE, DecimalConvention.DOT, Sign.COUNTS))
                .isEmpty();
    }

    @Test
    void aConvertedUnitIsEchoedWithBoth() {
        assertThat(read("5,3 km", METRE, DecimalConvention.COMMA).echo())
                .isEqualTo("5,3\u202Fkm = 5300\u202Fm");
        assertThat(read("38 km/h", Units.get("m/s"), DecimalConvention.DOT).echo())
                .isEqualTo("38\u202Fkm/h ≈ 10.5556\u202Fm/s");
    }

    @ParameterizedTest(name = "{0} is echoed {2}")
    @CsvSource({
        "-1.2, 1.2, '−1.2 m/s, read as 1.2 m/s'",
        "−4.32 km/h, 1.2, '−4.32 km/h = −1.2 m/s, read as 1.2 m/s'",
        "1.2, 1.2, 1.2 m/s",
        "-0, 0, 0 m/s"
    })
    void whereNoSignCountsAMinusIsLeftOutAndThatIsEchoed(
            String typed, BigDecimal value, String echo) {
        var unit = Units.get("m/s");
        var reading = TypedNumber.read(typed, unit, DecimalConvention.DOT, Sign.NONE);
        assertThat(((Read) reading).value()).isEqualByComparingTo(value);
        assertThat(((Read) reading).echo())
                .isEqualTo(echo.replaceAll("(?<=\\d) (?=[mk])", "\u202F"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"8.8", "8,8", "8.8:1", "8.8 : 1", "8.8 to 1", "880 %"})
    void aGlideRatioIsReadInItsUsualForms(String typed) {
        assertThat(read(typed, Units.NUMBER, DecimalConvention.DOT).value())
                .isEqualByComparingTo("8.8");
    }

    @ParameterizedTest(name = "“{0}”: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "''|Nothing was typed",
                "'   '|Nothing was typed",
                "NaN|is no number",
                "Infinity|is no number",
                "1e999|“e999” is no unit",
                "1e3|“e3” is no unit",
                "0x1F|“x1F” is no unit",
                "5.|is no number",
                "5..3|is no number",
                "1,2,3|is no number",
                "12 34|is no number",
                "1 200'300|is no number",
                "--5|is no number",
                "m|is no number",
                "٣٠|is no number",
                "⅓|⅓ has no exact decimal. Write as many decimals as you need, such as 0.33",
                "1 ⅔ km|⅔ has no exact decimal",
                "1.5½|is no number",
                "½½|is no number",
                "1  ½|is no number",
                "½ 1|is no number",
                "5 furlongs|“furlongs” is no unit",
                "5 km km|“km km” is no unit",
                "5 kg|“kg” is a mass (kg), but the answer is a length in m"
            })
    void whatIsNoNumberIsRefusedWithAReason(String typed, String reason) {
        assertThat(TypedNumber.read(typed, METRE, DecimalConvention.DOT))
                .isInstanceOfSatisfying(
                        Unreadable.class, u -> assertThat(u.why()).contains(reason));
    }

    @Test
    void sixtyFourCharactersAreReadAndSixtyFiveAreNot() {
        assertThat(read("1".repeat(64), METRE, DecimalConvention.DOT).value().precision())
                .isEqualTo(64);
        assertThat(TypedNumber.read("1".repeat(65), METRE, DecimalConvention.DOT))
                .isInstanceOf(Unreadable.class);
    }

    /// Whatever the reader echoes can be typed again and means the same.
    @Test
    void anEchoReadsBackToTheSameValue() {
        for (Unit unit : Units.all()) {
            var read = read("1234.5", unit, DecimalConvention.DOT);
            assertThat(read(read.echo(), unit, DecimalConvention.DOT)).isEqualTo(read);
        }
    }

    private static Read read(String typed, Unit expected, DecimalConvention convention) {
        var reading = TypedNumber.read(typed, expected, convention);
        assertThat(reading).as(typed).isInstanceOf(Read.class);
        return (Read) reading;
    }
}
