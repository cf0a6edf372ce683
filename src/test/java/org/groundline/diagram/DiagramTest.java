package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.formulary.Input;
import org.junit.jupiter.api.Test;

import java.util.Map;
import java.util.Set;

/// The door: what it lists, and what it refuses.
class DiagramTest {
    private static final Map<String, Double> GLIDE = Map.of("height", 600.0, "distance", 4800.0);
    private static final Diagram GLIDE_PATH = Diagrams.find("glide-path").orElseThrow();

    @Test
    void eachKindIsFoundByItsName() {
        assertThat(Diagrams.list())
                .hasSize(Motif.values().length)
                .allSatisfy(d -> assertThat(Diagrams.find(d.name())).containsSame(d));
        assertThat(Diagrams.find("no-such-drawing")).isEmpty();
    }

    @Test
    void aKindTellsItsInputsAndWhatMayBeAsked() {
        assertThat(GLIDE_PATH.inputs())
                .extracting(Input::name)
                .containsExactly("height", "distance");
        assertThat(GLIDE_PATH.optionalInputs())
                .extracting(Input::name)
                .containsExactly("reserve", "headwind", "airspeed", "still-air-distance");
        assertThat(GLIDE_PATH.askable()).contains("reserve", "glide-ratio");
        assertThat(GLIDE_PATH.askable(GLIDE.keySet()))
                .containsExactlyInAnyOrder("height", "distance", "glide-ratio");
    }

    @Test
    void aLabelIsWrittenAsTheStemWritesIt() {
        var situation =
                Situation.of(GLIDE, Set.of("height"), Set.of())
                        .withPrinted(Map.of("height", "1970\u202Fft"));

        assertThat(DrawnSvg.of(draw(situation)).texts())
                .contains("height 1970\u202Fft")
                .noneMatch(text -> text.contains("600"));
    }

    @Test
    void aLabelIsOtherwiseWrittenInTheUnitOfItsInputWithAThinSpace() {
        var svg = DrawnSvg.of(draw(Situation.of(GLIDE, Set.of("height"), Set.of())));

        assertThat(svg.texts()).contains("height 600\u202Fm");
    }

    @Test
    void onlyWhatIsAskedIsDrawnInTheAccent() {
        var svg = DrawnSvg.of(draw(Situation.of(GLIDE, Set.of("height"), Set.of("distance"))));

        assertThat(svg.elements())
                .filteredOn(e -> e.getAttribute("class").contains("asked"))
                .isNotEmpty()
                .allMatch(
                        e ->
                                e.getAttribute("data-part").equals("distance")
                                        || e.getTextContent().startsWith("distance"));
    }

    @Test
    void aMissingValueIsRefused() {
        assertRefused(Map.of("height", 600.0), Set.of(), "needs distance");
    }

    @Test
    void anUnknownValueIsRefused() {
        assertRefused(
                Map.of("height", 600.0, "distance", 4800.0, "weight", 1.0),
                Set.of(),
                "has no weight");
    }

    @Test
    void aLabelForAValueThatWasNotGivenIsRefused() {
        assertRefused(GLIDE, Set.of("reserve"), "has no reserve");
    }

    @Test
    void aValueOutsideItsRangeIsRefusedWithTheRangeAndTheUnit() {
        assertRefused(
                Map.of("height", 9000.0, "distance", 4800.0),
                Set.of(),
                "height must be from 10.0 to 5000.0, in m, but is 9000");
    }

    @Test
    void aValueThatIsNoNumberIsRefused() {
        assertRefused(Map.of("height", Double.NaN, "distance", 4800.0), Set.of(), "but is NaN");
    }

    @Test
    void whatTheTheoryRefusesIsFoundOutWithoutDrawingIt() {
        var wind = Diagrams.find("wind-triangle").orElseThrow();
        var values =
                Map.of(
                        "course", 0.0,
                        "airspeed", 10.0,
                        "wind-from", Math.PI / 2,
                        "wind-speed", 12.0);

        assertThatThrownBy(() -> wind.examine(values))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("crosswind");
    }

    @Test
    void anIdThatWouldBreakTheFileIsRefused() {
        var situation = Situation.of(GLIDE, Set.of(), Set.of());

        assertThatThrownBy(() -> GLIDE_PATH.draw(situation, Purpose.STEM, "a\"b", "en"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Drawing draw(Situation situation) {
        return GLIDE_PATH.draw(situation, Purpose.SOLUTION, "q", "en");
    }

    private static void assertRefused(
            Map<String, Double> values, Set<String> labelled, String why) {
        assertThatThrownBy(() -> draw(Situation.of(values, labelled, Set.of())))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the drawing glide-path")
                .hasMessageContaining(why);
    }
}
