package org.groundline.bank.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.numeric.Checked.Faulty;
import org.groundline.bank.numeric.Checked.Sound;
import org.groundline.bank.numeric.goal.Decision;
import org.groundline.bank.numeric.posed.Cause;
import org.groundline.bank.numeric.posed.PosedChoice;
import org.groundline.bank.numeric.posed.PosedOption;
import org.groundline.bank.numeric.source.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/// Templates that decide. The distance is height × glide ratio × ground speed ÷ airspeed.
class DecisionTest {
    private static final List<String> BOUNDS = List.of("1900", "3900");

    @ParameterizedTest
    @CsvSource({"-1, 0", "1899.9, 0", "1900, 1", "3899.9, 1", "3900, 2", "9000, 2"})
    void theOptionIsRightWhoseIntervalHoldsTheValueAndABoundBelongsAbove(double value, int place) {
        assertThat(decision().right(value)).isEqualTo(place);
    }

    @ParameterizedTest
    @CsvSource({"1800, true", "1800.1, false", "1900, false", "2000, true", "3801, false"})
    void nearerThanTwoTolerancesToABoundIsTooCloseToCall(double value, boolean clear) {
        assertThat(decision().isClear(value)).isEqualTo(clear);
    }

    @Test
    void theLastLineOfTheSolutionSaysWhereTheValueLies() {
        assertThat(Stream.of(1500.0, 2500.04, 4000.0).map(decision()::line))
                .containsExactly(
                        "The result is 1500\u202Fm: below 1900\u202Fm.",
                        "The result is 2500\u202Fm: between 1900\u202Fm and 3900\u202Fm.",
                        "The result is 4000\u202Fm: above 3900\u202Fm.");
    }

    @Test
    void thePosedKeyIsWhatTheDrawnValuesDecide() {
        NumericTemplate template = template(new SourceBuilder().decides());
        var keys = new HashSet<String>();
        for (long seed = 0; seed < 2_000; seed++) {
            var posed = (PosedChoice) template.pose(seed);
            double distance = distance(posed.drawn());
            assertThat(Math.min(Math.abs(distance - 1_900), Math.abs(distance - 3_900)))
                    .isGreaterThanOrEqualTo(100 - 1e-6);
            String middling = "From %s middling.".formatted(posed.drawn().get("height"));
            String key = distance < 1_900 ? "Short." : distance < 3_900 ? middling : "Long.";
            assertThat(rightOf(posed)).containsExactly(key);
            assertThat(posed.options())
                    .extracting(PosedOption::text)
                    .containsExactly("Short.", middling, "Long.");
            keys.add(key.equals(middling) ? "middling" : key);
        }
        assertThat(keys).hasSize(3);
    }

    @Test
    void aWrongOptionCarriesItsMisconception() {
        var posed = (PosedChoice) template(new SourceBuilder().decides()).pose(1);
        for (PosedOption option : posed.options()) {
            if (option instanceof PosedOption.Wrong(String text, Cause.Idea cause)) {
                assertThat(cause.misconception()).startsWith("idea " + text.substring(0, 4));
            }
        }
        assertThat(posed.options()).filteredOn(PosedOption.Wrong.class::isInstance).hasSize(2);
    }

    @Test
    void evaluatingTellsTheDecisionForGivenValues() {
        var given = Map.of("airspeed", "40", "glide_ratio", "8", "wind", "10", "height", "0.5 km");
        var evaluation = template(new SourceBuilder().decides()).evaluate(given);
        assertThat(evaluation.answer()).isEqualByComparingTo("3000");
        assertThat(evaluation.decision()).isEqualTo("From 500\u202Fm middling.");
    }

    @Test
    void anOptionShowsDrawnValuesAndNoStep() {
        var builder = new SourceBuilder().decides();
        builder.decision(BOUNDS, "Short.", "At {ground_speed} middling.", "Long.");
        assertFault(builder, "options[1].text", "there is no value {ground_speed}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-5", "2 %", "wide"})
    void theToleranceIsAnAmount(String tolerance) {
        assertFault(
                new SourceBuilder().decides().tolerance(tolerance),
                "decide.tolerance",
                "is no tolerance");
    }

    @Test
    void boundsAscendAndAreOneFewerThanOptions() {
        var builder = new SourceBuilder().decides();
        assertFault(
                builder.decision(List.of("3900", "1900"), "a", "b", "c"),
                "decide.bounds",
                "[3900, 1900] are no ascending numbers");
        assertFault(
                builder.decision(List.of("1900"), "a", "b", "c"),
                "decide.bounds",
                "there are 1 bounds and 3 options");
        assertFault(
                builder.decision(List.of("1900"), "a", "b"),
                "decide.bounds",
                "there are 1 bounds and 2 options");
    }

    @Test
    void anOptionThatIsHardlyEverRightIsReported() {
        var builder = new SourceBuilder().decides();
        builder.decision(List.of("900", "3900"), "Short.", "From {height} middling.", "Long.");
        assertFault(builder, "options[0].text", "this option is right in ");
    }

    @Test
    void casesTooCloseToCallCountAsRejected() {
        var builder = new SourceBuilder().decides().tolerance("700");
        assertFault(builder, "decide.bounds", "combinations are too near to a bound");
    }

    @Test
    void theFormulaIsInTheUnitAndItsFaultsStandAtDecide() {
        var builder = new SourceBuilder().decides();
        assertFault(builder.formula("height / airspeed"), "decide.formula", "is a time (s)");
        assertFault(
                new SourceBuilder().decides().between("200", "3000"),
                "decide.between",
                "the answer is ");
    }

    private static Decision decision() {
        var source = new SourceBuilder().decides().source();
        var parts = new TemplateReader(source, new Faults()).read().orElseThrow();
        return (Decision) parts.goal();
    }

    private static double distance(Map<String, String> drawn) {
        double airspeed = number(drawn, "airspeed");
        return number(drawn, "height")
                * number(drawn, "glide_ratio")
                * (airspeed - number(drawn, "wind"))
                / airspeed;
    }

    private static double number(Map<String, String> drawn, String name) {
        return Double.parseDouble(drawn.getOrDefault(name, "").split("\u202F")[0]);
    }

    private static List<String> rightOf(PosedChoice posed) {
        return posed.options().stream()
                .filter(PosedOption.Right.class::isInstance)
                .map(PosedOption::text)
                .toList();
    }

    private static NumericTemplate template(SourceBuilder builder) {
        var checked = NumericTemplate.check(builder.source());
        assertThat(checked).isInstanceOf(Sound.class);
        return ((Sound) checked).template();
    }

    private static void assertFault(SourceBuilder builder, String at, String problem) {
        var checked = NumericTemplate.check(builder.source());
        assertThat(checked).isInstanceOf(Faulty.class);
        assertThat(((Faulty) checked).faults())
                .anyMatch(f -> f.at().equals(at) && f.problem().contains(problem));
    }
}
