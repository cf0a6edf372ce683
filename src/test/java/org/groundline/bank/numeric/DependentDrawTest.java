package org.groundline.bank.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.groundline.bank.numeric.Checked.Faulty;
import org.groundline.bank.numeric.Checked.Sound;
import org.groundline.bank.numeric.posed.PosedChoice;
import org.groundline.bank.numeric.posed.PosedNumber;
import org.groundline.bank.numeric.source.Fault;
import org.groundline.error.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/// Drawn values that are computed from others: a field lies at a share, which nobody is told, of
/// what can be reached in still air. Asked is how far beyond it the glide into the wind goes.
class DependentDrawTest {
    private static final String STEM = "Fly at {airspeed}, {glide_ratio} to 1, wind {wind}, ";
    private static final Map<String, String> GIVEN =
            Map.of(
                    "airspeed", "38 km/h",
                    "glide_ratio", "8.8",
                    "wind", "15 km/h",
                    "height", "600 m",
                    "field", "3000 m");

    private static SourceBuilder field() {
        return new SourceBuilder()
                .list("share", List.of("0.4", "0.6", "0.8", "1"), "")
                .dependent("field", "height * glide_ratio * share", "50", "m")
                .stem(STEM + "height {height}, field at {field}.")
                .formula("height * glide_ratio * ground_speed / airspeed - field")
                .between("-5000", "5000")
                .onlyWorked(GIVEN, "195.8 m", "0.1 m");
    }

    /// Rounded here by decimals alone: height, ratio and share have few digits, so that their
    /// product is exact.
    @Test
    void itIsComputedFromTheOthersAndRoundedToTheNearestStep() {
        var template = template(field());
        var shares = new HashSet<BigDecimal>();
        for (long seed = 0; seed < 1_000; seed++) {
            Map<String, String> drawn = template.pose(seed).drawn();
            BigDecimal share = decimal(drawn, "share");
            BigDecimal exact =
                    decimal(drawn, "height")
                            .multiply(decimal(drawn, "glide_ratio"))
                            .multiply(share);
            BigDecimal fifty = new BigDecimal("50");
            assertThat(decimal(drawn, "field"))
                    .isEqualTo(exact.divide(fifty, 0, RoundingMode.HALF_UP).multiply(fifty));
            shares.add(share);
        }
        assertThat(shares).hasSize(4);
    }

    @Test
    void itIsToldAndUsedAsRounded() {
        var template = template(field());
        for (long seed = 0; seed < 300; seed++) {
            var posed = (PosedNumber) template.pose(seed);
            Map<String, String> drawn = posed.drawn();
            assertThat(posed.stem()).endsWith("field at " + drawn.get("field") + ".");
            double airspeed = value(drawn, "airspeed");
            double reached =
                    value(drawn, "height")
                            * value(drawn, "glide_ratio")
                            * (airspeed - value(drawn, "wind"))
                            / airspeed;
            double beyond = reached - value(drawn, "field");
            double printed = Math.floor(beyond / 50 + 1e-9) * 50;
            assertThat(posed.answer().doubleValue()).isEqualTo(printed);
        }
    }

    @Test
    void whereItIsWrittenDoesNotMatter() {
        var turned =
                new SourceBuilder()
                        .dependent("field", "reach * share", "50", "m")
                        .dependent("reach", "height * glide_ratio", "1", "m")
                        .list("share", List.of("0.4", "0.6", "0.8", "1"), "")
                        .stem(STEM + "height {height}, field at {field}.")
                        .onlyWorked(GIVEN, "3195.8 m", "0.1 m");
        var posed = template(turned).pose(7);
        BigDecimal reach =
                decimal(posed.drawn(), "height").multiply(decimal(posed.drawn(), "glide_ratio"));
        assertThat(decimal(posed.drawn(), "reach")).isEqualByComparingTo(reach);
        assertThat(posed.drawn().keySet())
                .containsExactly(
                        "airspeed", "glide_ratio", "wind", "height", "field", "reach", "share");
        assertThat(posed.stem()).doesNotContain("{");
    }

    @Test
    void aConditionMayUseIt() {
        var template = template(field().where("field <= 3000 [m]"));
        for (long seed = 0; seed < 500; seed++) {
            assertThat(value(template.pose(seed).drawn(), "field")).isLessThanOrEqualTo(3_000);
        }
    }

    @Test
    void anOptionMayShowIt() {
        var deciding =
                field().decides()
                        .decision(List.of("-500", "500"), "Not to {field}.", "So.", "Far.");
        var posed = (PosedChoice) template(deciding).pose(11);
        assertThat(posed.options().getFirst().text())
                .isEqualTo("Not to " + posed.drawn().get("field") + ".");
    }

    @Test
    void itIsGivenLikeAnyOtherValueAndWhatIsNotToldMayBeLeftOut() {
        var template = template(field());
        double reached = 600 * 8.8 * 23 / 38;
        assertThat(template.evaluate(GIVEN).answer().doubleValue())
                .isCloseTo(reached - 3_000, within(1e-8));
        var given = new HashMap<>(GIVEN);
        given.put("field", "1.234 km");
        given.put("share", "0.5");
        assertThat(template.evaluate(given).answer().doubleValue())
                .isCloseTo(reached - 1_234, within(1e-8));
    }

    @Test
    void whatIsToldMustBeGivenAndWhatIsNotMustBeReadable() {
        var template = template(field());
        var given = new HashMap<>(GIVEN);
        given.remove("field");
        assertThatThrownBy(() -> template.evaluate(given))
                .isInstanceOf(Refusal.Invalid.class)
                .hasMessageContaining("field: it is missing");
        given.putAll(Map.of("field", "3000 m", "share", "half"));
        assertThatThrownBy(() -> template.evaluate(given))
                .isInstanceOf(Refusal.Invalid.class)
                .hasMessageContaining("share: ");
    }

    @Test
    void evaluatingADecisionNeedsNothingThatIsNotTold() {
        var deciding =
                field().decides()
                        .decision(List.of("-500", "500"), "Not to {field}.", "So.", "Far.");
        assertThat(template(deciding).evaluate(GIVEN).decision()).isEqualTo("So.");
    }

    @Test
    void aCircleIsRefusedWithItsMembersAndNoOthers() {
        assertThat(
                        faults(
                                field().dependent("field", "first + 1 [m]", "1", "m")
                                        .dependent("first", "second + height", "1", "m")
                                        .dependent("second", "third * share", "1", "m")
                                        .dependent("third", "first", "1", "m")))
                .containsExactly(
                        new Fault(
                                "draw.first.formula",
                                "it is computed in a circle: first needs second needs third needs"
                                        + " first",
                                "draw one of them from a range or a list"));
        assertFault(
                field().dependent("field", "field + height", "50", "m"),
                "draw.field.formula",
                "field needs field");
    }

    @Test
    void itsDimensionIsThatOfItsUnit() {
        assertFault(
                field().dependent("field", "height * share + wind", "50", "m"),
                "draw.field.formula",
                "`height * share + wind` adds a length (m) and a speed (m/s)");
        assertFault(
                field().dependent("field", "height * share", "50", "s"),
                "draw.field.formula",
                "`height * share` is a length (m), but s is a time (s)");
    }

    @Test
    void itsFormulaKnowsDrawnValuesOnly() {
        assertFault(
                field().dependent("field", "ground_speed * 60 [s]", "50", "m"),
                "draw.field.formula",
                "there is no value called `ground_speed`");
    }

    @Test
    void aDrawWithoutAKnownUnitIsTheOnlyFault() {
        var faults = faults(field().list("share", List.of("1", "2"), "furlong"));
        assertThat(faults).extracting(Fault::at).containsExactly("draw.share.unit");
    }

    @Test
    void oneWithoutAFiniteValueIsRefusedWithItsCase() {
        var dividing = field().list("share", List.of("0", "0.5", "1"), "");
        assertFault(
                dividing.dependent("field", "height / share", "50", "m"),
                "draw.field.formula",
                "`height / share` is not finite for {airspeed=34\u202Fkm/h, glide_ratio=7.0,"
                        + " wind=5\u202Fkm/h, height=200\u202Fm, share=0}");
    }

    @Test
    void oneThatTheoryRefusesIsRefusedWithItsCase() {
        assertFault(
                field().list("share", List.of("0.4", "1", "-1"), "")
                        .dependent("field", "height * load_factor(share * 1 [rad] * 2)", "50", "m"),
                "draw.field.formula",
                " for {airspeed=");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-5", "half", "1e3", ""})
    void itsStepIsANumberAboveZero(String step) {
        assertFault(
                field().dependent("field", "height * share", step, "m"),
                "draw.field.round",
                "“%s” is no step".formatted(step));
    }

    @Test
    void whatMoreThanOtherDrawsUseMustBeTold() {
        String untold = "it does not tell {share}";
        assertFault(field().where("share < 2"), "stem", untold);
        assertFault(field().step("part", "Its part.", "share", ""), "stem", untold);
        var drawing = Map.of("height", "height", "distance", "field * share");
        assertFault(field().diagram("glide-path", drawing), "stem", untold);
        assertFault(field().mistake("doubled", "field * share"), "stem", untold);
        assertFault(field().formula("field * share"), "stem", untold);
        assertFault(field().explain("It is {share} of it: {answer}."), "stem", untold);
        var deciding = field().decides();
        assertFault(
                deciding.decision(List.of("-500", "500"), "{share}.", "So.", "Far."),
                "stem",
                untold);
    }

    @Test
    void whatNothingUsesMustBeTold() {
        assertFault(
                field().dependent("unused", "height", "1", "m"),
                "stem",
                "it does not tell {unused}");
        assertFault(
                field().dependent("field", "height * 8", "50", "m"),
                "stem",
                "it does not tell {share}");
    }

    /// 18 heights and speeds make 18 questions, whatever the 1000 shares are that no one sees.
    @Test
    void questionsThatTellTheSameAreOne() {
        var few =
                field().range("airspeed", "34", "39", "1", "km/h")
                        .list("glide_ratio", List.of("8"), "")
                        .list("wind", List.of("10"), "km/h")
                        .list("height", List.of("400", "500", "600"), "m")
                        .range("share", "0.901", "0.910", "0.001", "")
                        .dependent("field", "height * share", "1000", "m");
        assertThat(faults(few))
                .contains(
                        new Fault(
                                "draw",
                                "there are only 18 different questions",
                                "draw more values; at least 50 are needed"));
    }

    @Test
    void moreThanFortyDrawsAreRefused() {
        var many = new SourceBuilder();
        for (int i = 0; i < 37; i++) {
            many.list("value" + i, List.of("1"), "");
        }
        assertFault(many, "draw", "41 values are drawn");
    }

    private static BigDecimal decimal(Map<String, String> drawn, String name) {
        return new BigDecimal(drawn.getOrDefault(name, "").split("\u202F", 2)[0]);
    }

    private static double value(Map<String, String> drawn, String name) {
        return decimal(drawn, name).doubleValue();
    }

    private static void assertFault(SourceBuilder builder, String at, String problem) {
        assertThat(faults(builder))
                .anySatisfy(
                        fault -> {
                            assertThat(fault.at()).isEqualTo(at);
                            assertThat(fault.problem()).contains(problem);
                        });
    }

    private static List<Fault> faults(SourceBuilder builder) {
        return switch (NumericTemplate.check(builder.source())) {
            case Sound sound -> List.of();
            case Faulty faulty -> faulty.faults();
        };
    }

    private static NumericTemplate template(SourceBuilder builder) {
        assertThat(faults(builder)).isEmpty();
        return ((Sound) NumericTemplate.check(builder.source())).template();
    }
}
