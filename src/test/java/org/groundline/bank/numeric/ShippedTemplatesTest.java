package org.groundline.bank.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.groundline.bank.numeric.Checked.Faulty;
import org.groundline.bank.numeric.Checked.Sound;
import org.groundline.bank.numeric.ShippedTemplates.Shipped;
import org.groundline.bank.numeric.draw.Given;
import org.groundline.bank.numeric.posed.PosedChoice;
import org.groundline.bank.numeric.posed.PosedNumber;
import org.groundline.bank.numeric.posed.PosedNumber.MistakeRange;
import org.groundline.bank.numeric.posed.PosedOption;
import org.groundline.bank.numeric.posed.PosedPicture;
import org.groundline.bank.numeric.posed.PosedTemplate;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.TemplateSource.AnswerSource;
import org.groundline.bank.numeric.source.TemplateSource.DecideSource;
import org.groundline.diagram.Diagrams;
import org.groundline.diagram.Purpose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;

/// The numeric templates of the bank, each by itself.
class ShippedTemplatesTest {
    static List<Shipped> all() {
        return ShippedTemplates.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void aShippedTemplateIsSoundAndSoIsWhateverItPoses(Shipped shipped) {
        switch (NumericTemplate.check(shipped.source())) {
            case Faulty faulty -> assertThat(faulty.faults()).as(shipped.toString()).isEmpty();
            case Sound sound ->
                    LongStream.range(0, 500)
                            .mapToObj(sound.template()::pose)
                            .forEach(ShippedTemplatesTest::assertSound);
        }
    }

    static List<Shipped> askingForANumber() {
        return all().stream().filter(s -> s.source().asked() instanceof AnswerSource).toList();
    }

    /// The last step of a solution is the answer, or a quick rule for it that is as good as the
    /// tolerance; both were written by hand and could differ.
    @ParameterizedTest(name = "{0}")
    @MethodSource("askingForANumber")
    void theLastStepIsTheAnswer(Shipped shipped) {
        var parts = new TemplateReader(shipped.source(), new Faults()).read().orElseThrow();
        var steps = parts.working().steps();
        var last = steps.getLast();
        for (var example : shipped.source().worked()) {
            var given = Given.read(example.given(), parts.space(), parts.told());
            var instance = parts.working().solve(Given.array(given.values().orElseThrow()));
            double shown = instance.value(parts.working().drawn() + steps.size() - 1);
            assertThat(last.unit().fromSi(shown))
                    .isCloseTo(
                            instance.answer(),
                            within(parts.goal().tolerance().of(instance.answer())));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void everyTemplateHasTwoWorkedExamplesAndTwoMistakesOrThreeOptions(Shipped shipped) {
        assertThat(shipped.source().worked()).hasSizeGreaterThanOrEqualTo(2);
        switch (shipped.source().asked()) {
            case AnswerSource answer ->
                    assertThat(answer.mistakes()).hasSizeGreaterThanOrEqualTo(2);
            case DecideSource decide -> assertThat(decide.options()).hasSizeBetween(3, 4);
        }
    }

    @Test
    void halfOfTheTemplatesAreForHeadArithmetic() {
        var core = all().stream().filter(s -> s.audience().equals("core"));
        assertThat(core.count() * 2).isGreaterThanOrEqualTo(all().size());
    }

    @Test
    void thereAreAtLeastEightyTemplates() {
        assertThat(all()).hasSizeGreaterThanOrEqualTo(80);
    }

    @Test
    void noTwoTemplatesShareAnId() {
        assertThat(all()).extracting(Shipped::toString).doesNotHaveDuplicates();
    }

    private static void assertSound(PosedTemplate posed) {
        assertThat(posed.stem()).doesNotContain("{");
        assertThat(posed.explanation()).doesNotContain("{");
        posed.picture().ifPresent(ShippedTemplatesTest::assertDrawn);
        switch (posed) {
            case PosedNumber number -> assertSoundNumber(number);
            case PosedChoice choice ->
                    assertThat(choice.options())
                            .filteredOn(PosedOption.Right.class::isInstance)
                            .hasSize(1);
        }
    }

    /// What is asked has no value in what a student may know.
    private static void assertDrawn(PosedPicture picture) {
        var diagram = Diagrams.find(picture.kind()).orElseThrow();
        diagram.draw(picture.solution(), Purpose.SOLUTION, "f", "en");
        picture.stem()
                .ifPresent(
                        stem -> {
                            assertThat(stem.values()).doesNotContainKeys(keys(stem.asked()));
                            diagram.draw(stem, Purpose.STEM, "f", "en");
                        });
    }

    private static String[] keys(Set<String> names) {
        return names.toArray(String[]::new);
    }

    private static void assertSoundNumber(PosedNumber posed) {
        assertThat(posed.answer()).isBetween(posed.lowest(), posed.highest());
        for (MistakeRange mistake : posed.mistakes()) {
            boolean below = mistake.highest().compareTo(posed.lowest()) < 0;
            boolean above = mistake.lowest().compareTo(posed.highest()) > 0;
            assertThat(below || above).as("%s", posed).isTrue();
        }
    }
}
