package org.groundline.bank.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.numeric.Checked.Faulty;
import org.groundline.bank.numeric.Checked.Sound;
import org.groundline.bank.numeric.posed.PosedPicture;
import org.groundline.bank.numeric.posed.PosedTemplate;
import org.groundline.bank.numeric.source.TemplateSource.DiagramSource;
import org.groundline.diagram.Situation;
import org.junit.jupiter.api.Test;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The drawing of a template: what is refused, and what a question as posed has of it.
class PictureTest {
    private static final Map<String, String> GLIDE =
            Map.of("height", "height", "distance", "answer", "headwind", "wind");

    @Test
    void aSolutionTellsAllThatHasATextInTheWordsOfTheItem() {
        PosedTemplate posed = posed(new SourceBuilder().diagram("glide-path", GLIDE));
        Situation solution = posed.picture().orElseThrow().solution();

        assertThat(posed.picture().orElseThrow().stem()).isEmpty();
        assertThat(solution.labelled()).containsExactlyInAnyOrder("height", "distance", "headwind");
        assertThat(solution.asked()).containsExactly("distance");
        assertThat(solution.printed())
                .containsEntry("height", posed.drawn().get("height"))
                .containsEntry("headwind", posed.drawn().get("wind"));
        assertThat(posed.explanation()).contains(solution.printed().getOrDefault("distance", "-"));
    }

    @Test
    void aStemKnowsDrawnValuesOnly() {
        var values = new LinkedHashMap<>(GLIDE);
        values.put("airspeed", "ground_speed + wind");
        Situation stem =
                posed(new SourceBuilder().diagram(inStem("glide-path", values, List.of())))
                        .picture()
                        .flatMap(PosedPicture::stem)
                        .orElseThrow();

        assertThat(stem.values()).containsOnlyKeys("height", "headwind");
        assertThat(stem.printed()).containsOnlyKeys("height", "headwind");
        assertThat(stem.labelled()).containsExactlyInAnyOrder("height", "headwind");
        assertThat(stem.asked()).containsExactly("distance");
    }

    @Test
    void aValueThatFollowsIsToldOnlyWithTheSolution() {
        var source =
                new DiagramSource(
                        "glide-path",
                        GLIDE,
                        Optional.empty(),
                        List.of("height", "glide-ratio"),
                        true);
        PosedPicture picture = posed(new SourceBuilder().diagram(source)).picture().orElseThrow();

        assertThat(picture.solution().labelled())
                .containsExactlyInAnyOrder("height", "glide-ratio");
        assertThat(picture.stem().orElseThrow().labelled()).containsExactly("height");
    }

    @Test
    void aDrawnValueMayBeToldByTheDrawingBesideTheStemAlone() {
        String stem = "Fly at {airspeed}, {glide_ratio} to 1, wind {wind}. How far?";
        var told = new SourceBuilder().stem(stem).diagram(inStem("glide-path", GLIDE, List.of()));

        assertThat(NumericTemplate.check(told.source())).isInstanceOf(Sound.class);
        assertFault(
                new SourceBuilder().stem(stem).diagram("glide-path", GLIDE),
                "stem",
                "it does not tell {height}");
        assertFault(
                new SourceBuilder()
                        .stem(stem)
                        .diagram(inStem("glide-path", GLIDE, List.of("headwind"))),
                "stem",
                "it does not tell {height}");
    }

    @Test
    void aSilentValueIsDrawnAndNeverWritten() {
        var builder =
                new SourceBuilder()
                        .step("curve", "Curve.", "0.035 [s/m]", "s/m")
                        .step("tilt", "Tilt.", "-0.63", "")
                        .step("start", "Start.", "3.93 [m/s]", "m/s")
                        .diagram(
                                "polar-tangent",
                                Map.of(
                                        "a", "curve",
                                        "b", "tilt",
                                        "c", "start",
                                        "maximum-speed", "55 [km/h]"));

        Situation solution = posed(builder).picture().orElseThrow().solution();

        assertThat(solution.values()).containsKeys("a", "b", "c", "maximum-speed");
        assertThat(solution.printed()).isEmpty();
    }

    @Test
    void aDrawingThatThereIsNotIsRefusedWithThoseThereAre() {
        assertFault(
                new SourceBuilder().diagram("glide-slope", GLIDE),
                "diagram.kind",
                "there is no drawing “glide-slope”");
    }

    @Test
    void aMissingValueIsRefused() {
        assertFault(
                new SourceBuilder().diagram("glide-path", Map.of("height", "height")),
                "diagram.values",
                "needs the value distance");
    }

    @Test
    void aValueThatTheDrawingDoesNotHaveIsRefused() {
        assertFault(
                new SourceBuilder().diagram("reserve-descent", Map.of("speed", "wind")),
                "diagram.values.speed",
                "the drawing reserve-descent has no value “speed”");
    }

    @Test
    void aFormulaOfAnotherDimensionIsRefusedWithBothNamed() {
        assertFault(
                new SourceBuilder()
                        .diagram("glide-path", Map.of("height", "wind", "distance", "answer")),
                "diagram.values.height",
                "`wind` is a speed (m/s), but height of the drawing is a length (m)");
    }

    @Test
    void aLabelThatTheDrawingCannotTellIsRefused() {
        assertFault(
                new SourceBuilder().diagram(inStem("glide-path", GLIDE, List.of("reserve"))),
                "diagram.labels",
                "cannot tell “reserve”");
    }

    @Test
    void aLabelWithoutATextIsRefused() {
        var values = Map.of("height", "height * 0.5", "distance", "answer");
        assertFault(
                new SourceBuilder().diagram(inStem("glide-path", values, List.of("height"))),
                "diagram.labels",
                "height is computed in place and has no text");
    }

    @Test
    void anAskedValueThatTheDrawingDoesNotHaveIsRefused() {
        var source = new DiagramSource("glide-path", GLIDE, Optional.of("drag"), List.of(), false);
        assertFault(new SourceBuilder().diagram(source), "diagram.asked", "cannot tell “drag”");
    }

    @Test
    void aCaseThatCannotBeDrawnIsRefusedWithItsValues() {
        var values = Map.of("height", "height * 20", "distance", "answer * 20");
        assertFault(
                new SourceBuilder().diagram("glide-path", values),
                "diagram",
                "height must be from 10.0 to 5000.0, in m, but is");
    }

    private static DiagramSource inStem(
            String kind, Map<String, String> values, List<String> labels) {
        return new DiagramSource(kind, values, Optional.empty(), labels, true);
    }

    private static PosedTemplate posed(SourceBuilder builder) {
        return switch (NumericTemplate.check(builder.source())) {
            case Sound sound -> sound.template().pose(1);
            case Faulty faulty -> throw new AssertionError(faulty.faults());
        };
    }

    private static void assertFault(SourceBuilder builder, String at, String problem) {
        assertThat(NumericTemplate.check(builder.source()))
                .isInstanceOfSatisfying(
                        Faulty.class,
                        faulty ->
                                assertThat(faulty.faults())
                                        .anySatisfy(
                                                fault -> {
                                                    assertThat(fault.at()).isEqualTo(at);
                                                    assertThat(fault.problem()).contains(problem);
                                                    assertThat(fault.remedy()).isNotBlank();
                                                }));
    }
}
