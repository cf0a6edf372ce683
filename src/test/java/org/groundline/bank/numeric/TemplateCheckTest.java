package org.groundline.bank.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.numeric.Checked.Faulty;
import org.groundline.bank.numeric.Checked.Sound;
import org.groundline.bank.numeric.source.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;
import java.util.Map;

class TemplateCheckTest {
    @Test
    void aSoundTemplateLoads() {
        assertThat(NumericTemplate.check(new SourceBuilder().source())).isInstanceOf(Sound.class);
    }

    @Test
    void anAnswerOfAnotherDimensionIsRefusedWithBothNamed() {
        assertFault(
                new SourceBuilder().formula("ground_speed * 2"),
                "answer.formula",
                "`ground_speed * 2` is a speed (m/s), but m is a length (m)");
    }

    @Test
    void aMistakeOfAnotherDimensionIsRefusedAtItsPlace() {
        assertFault(
                new SourceBuilder().mistake("units-mixed", "height * airspeed + wind"),
                "mistakes[2].formula",
                "`height * airspeed + wind` adds something in");
    }

    @Test
    void aStepOfAnotherDimensionIsRefused() {
        assertFault(
                new SourceBuilder().step("time", "Time.", "height / airspeed", "m"),
                "steps[1].formula",
                "is a time (s), but m is a length (m)");
    }

    @Test
    void anUnknownNameIsRefusedWithTheKnownOnes() {
        assertFault(
                new SourceBuilder().formula("height * ratio"),
                "answer.formula",
                "there is no value called `ratio`");
    }

    @Test
    void moreThanFortyStepsAreRefused() {
        var many = new SourceBuilder();
        for (int i = 2; i <= 40; i++) {
            many.step("step" + i, "Again.", "wind", "km/h");
        }
        assertThat(NumericTemplate.check(many.source())).isInstanceOf(Sound.class);
        assertFault(many.step("last", "Last.", "wind", "km/h"), "steps", "there are 41 steps");
    }

    @Test
    void aNameIsUsedOnlyAfterItsStep() {
        assertFault(
                new SourceBuilder().where("ground_speed > 5 [km/h]"), "where", "`ground_speed`");
    }

    @Test
    void aNameIsGivenOnlyOnce() {
        assertFault(
                new SourceBuilder().step("wind", "Again.", "wind", "km/h"),
                "steps[1].name",
                "“wind” is taken");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Wind", "wind speed", "1wind", "g", "rho0", "answer", ""})
    void aDrawNeedsANameOfItsOwn(String name) {
        assertFault(
                new SourceBuilder().range(name, "1", "2", "1", "m"), "draw." + name, "“" + name);
    }

    @Test
    void anUnknownUnitIsRefused() {
        assertFault(
                new SourceBuilder().range("wind", "5", "20", "5", "furlong"),
                "draw.wind.unit",
                "“furlong” is no unit");
        assertFault(new SourceBuilder().unit("furlong"), "answer.unit", "“furlong” is no unit");
    }

    @Test
    void aRangeEndsOnAStepAndRunsUpwards() {
        var builder = new SourceBuilder();
        assertFault(builder.range("wind", "5", "21", "5", "km/h"), "draw.wind.to", "end at 21");
        assertFault(builder.range("wind", "5", "4", "1", "km/h"), "draw.wind", "from 5 to 4");
        assertFault(builder.range("wind", "5", "9", "0", "km/h"), "draw.wind", "by 0");
        assertFault(builder.range("wind", "5", "x", "1", "km/h"), "draw.wind.to", "“x”");
        assertFault(builder.range("wind", "NaN", "9", "1", "km/h"), "draw.wind.from", "“NaN”");
        assertFault(builder.range("wind", "1e9", "9", "1", "km/h"), "draw.wind.from", "“1e9”");
        assertFault(
                builder.range("wind", "0", "10", "0.001", "km/h"),
                "draw.wind",
                "over 10000 values");
    }

    @Test
    void aListHoldsEachValueOnce() {
        var builder = new SourceBuilder();
        assertFault(builder.list("wind", List.of("5", "5.0"), "km/h"), "draw.wind.any-of", "twice");
        assertFault(
                builder.list("wind", List.of("5", "ten"), "km/h"), "draw.wind.any-of[1]", "“ten”");
        assertFault(builder.list("wind", List.of(), "km/h"), "draw.wind.from", "missing");
    }

    @Test
    void aDrawThatCanDivideByZeroIsRefusedWithTheCase() {
        assertFault(
                new SourceBuilder().formula("height * airspeed / (wind - 5 [km/h])"),
                "answer.formula",
                "is not finite for {");
    }

    @Test
    void aCaseThatTheoryRefusesIsRefused() {
        assertFault(
                new SourceBuilder()
                        .range("wind", "5", "50", "5", "km/h")
                        .where("wind < 60 [km/h]")
                        .formula(
                                "glide_distance(height, ground_speed(airspeed, wind),"
                                        + " airspeed / glide_ratio)"),
                "answer.formula",
                "must be below the airspeed");
    }

    @Test
    void aConditionThatRejectsMoreThanHalfIsReported() {
        assertFault(new SourceBuilder().where("wind < 9 [km/h]"), "where", "rejects 1755 of 2340");
    }

    @Test
    void anImplausibleAnswerIsReportedWithItsCase() {
        assertFault(
                new SourceBuilder().between("200", "6000"), "answer.between", "the answer is 6");
    }

    @Test
    void fortyNineQuestionsAreTooFew() {
        var few = new SourceBuilder().list("airspeed", List.of("38"), "km/h");
        few.list("wind", List.of("10"), "km/h").range("glide_ratio", "7", "9", "0.5", "");
        assertFault(few.range("height", "200", "650", "50", "m"), "draw", "only 50 d", false);
        assertFault(few.range("height", "200", "600", "50", "m"), "draw", "only 45 different");
    }

    @Test
    void moreThanTenMillionCombinationsAreRefusedAtOnce() {
        var huge = new SourceBuilder();
        huge.range("airspeed", "30", "40", "0.01", "km/h").range("height", "1", "9999", "1", "m");
        assertFault(huge, "draw", "more than 10000000 combinations");
    }

    @Test
    void aMistakeTooNearToTheKeyIsReported() {
        assertFault(
                new SourceBuilder()
                        .mistake(
                                "off-by-a-bit",
                                "height * glide_ratio * ground_speed / airspeed * 1.05"),
                "mistakes[2].formula",
                "off-by-a-bit is nearer than 3 tolerances to the key in 2340 of 2340");
    }

    @Test
    void aMistakeHappensAtAStepThatIsThere() {
        assertFault(
                new SourceBuilder().mistakeAt("speed", "doubled", "2 * height * glide_ratio"),
                "mistakes[2].at",
                "there is no step called “speed”");
    }

    @Test
    void aWorkedExampleMustComeOut() {
        var given =
                Map.of(
                        "airspeed", "38 km/h",
                        "glide_ratio", "8.8",
                        "wind", "15 km/h",
                        "height", "600 m");
        assertFault(
                new SourceBuilder().worked(given, "3300 m", "20 m"),
                "worked[1].answer",
                "the formula gives 3195.79\u202Fm, the example says 3300 m");
        assertFault(
                new SourceBuilder().worked(given, "3.3 kg", "20 m"), "worked[1].answer", "mass");
        assertFault(new SourceBuilder().withoutWorked(), "worked", "no worked example");
    }

    @Test
    void aWorkedExampleGivesEveryDrawnValueAndNoOther() {
        var builder = new SourceBuilder().worked(Map.of("speed", "38 km/h"), "3200 m", "5 m");
        assertFault(builder, "worked[1].given.wind", "missing");
        assertFault(builder, "worked[1].given.speed", "no such value");
    }

    @Test
    void aTextNamesKnownValuesOnlyAndTellsAllThatIsDrawn() {
        assertFault(new SourceBuilder().stem("Wind {winds}."), "stem", "no value {winds}");
        assertFault(new SourceBuilder().stem("Wind {wind}."), "stem", "does not tell {height}");
        assertFault(new SourceBuilder().explain("So {result}."), "explain", "no value {result}");
        assertFault(new SourceBuilder().explain("So {answer."), "explain", "a brace stands alone");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 %", "21 %", "-2 %", "2 m", "10", "wide", ""})
    void aToleranceIsAShareOrAtLeastHalfTheRounding(String tolerance) {
        assertFault(new SourceBuilder().tolerance(tolerance), "answer.tolerance", "no tolerance");
    }

    @Test
    void roundingSideAndRangeAreNeeded() {
        assertFault(new SourceBuilder().round("0"), "answer.round", "“0” is no step");
        assertFault(new SourceBuilder().side("left"), "answer.side", "“left” is no side");
        assertFault(new SourceBuilder().between(), "answer.between", "it is missing");
        assertFault(new SourceBuilder().between("8", "2"), "answer.between", "[8, 2] is no range");
    }

    @Test
    void whatHasNoSignIsNeverBelowZero() {
        assertFault(new SourceBuilder().sign("plus"), "answer.sign", "“plus” is no sign");
        assertFault(
                new SourceBuilder().sign("none").between("-10", "8000"),
                "answer.sign",
                "the plausible range begins below zero");
    }

    @Test
    void allFaultsOfAStageAreToldAtOnce() {
        var faults = faultsOf(new SourceBuilder().round("x").unit("y").stem("{z}"));
        assertThat(faults).extracting(Fault::at).contains("answer.round", "answer.unit", "stem");
        assertThat(faults).allSatisfy(f -> assertThat(f.remedy()).isNotBlank());
    }

    private static void assertFault(SourceBuilder builder, String at, String problem) {
        assertFault(builder, at, problem, true);
    }

    private static void assertFault(
            SourceBuilder builder, String at, String problem, boolean expected) {
        var faults = faultsOf(builder);
        boolean found =
                faults.stream().anyMatch(f -> f.at().equals(at) && f.problem().contains(problem));
        assertThat(found).as("%s: %s in %s", at, problem, faults).isEqualTo(expected);
    }

    private static List<Fault> faultsOf(SourceBuilder builder) {
        return switch (NumericTemplate.check(builder.source())) {
            case Sound sound -> List.of();
            case Faulty faulty -> faulty.faults();
        };
    }
}
