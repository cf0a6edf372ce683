package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import static java.util.stream.Collectors.toSet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// A drawing beside the stem gives nothing away.
class StemTest {
    private static final int SITUATIONS = 60;

    static Stream<Diagram> kinds() {
        return Diagrams.list().stream();
    }

    static Stream<Diagram> sketches() {
        return kinds().filter(d -> !Set.of("polar-tangent", "wind-triangle").contains(d.name()));
    }

    /// Whatever is asked, and whatever the values are: the picture is one and the same. A polar
    /// that is there to be read is kept, and which optional inputs there are may be seen.
    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void whereNothingIsToldAllSituationsLookAlike(Diagram diagram) {
        var samples = new Samples(11);
        var shown = samples.valuesFor(diagram);
        shown.keySet().removeAll(diagram.askable());
        var optional = names(diagram.optionalInputs().stream().map(i -> i.name()));
        for (String asked : diagram.askable(names(diagram.inputs().stream().map(i -> i.name())))) {
            var stems = new HashSet<String>();
            for (int i = 0; i < SITUATIONS; i++) {
                var values = samples.valuesFor(diagram);
                values.keySet().removeAll(optional);
                values.putAll(shown);
                stem(diagram, values, Set.of(), asked).ifPresent(d -> stems.add(d.svg()));
            }
            assertThat(stems).as(asked).hasSize(1);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void whereAllElseIsToldThePictureDoesNotFollowWhatIsAsked(Diagram diagram) {
        var samples = new Samples(12);
        int compared = 0;
        for (int i = 0; i < SITUATIONS; i++) {
            var values = samples.valuesFor(diagram);
            var others = samples.valuesFor(diagram);
            for (String asked : askableInputs(diagram, values)) {
                var changed = new HashMap<>(values);
                changed.put(asked, others.getOrDefault(asked, values.get(asked)));
                var told = askableInputs(diagram, values);
                told.remove(asked);
                var stem = stem(diagram, values, told, asked);
                var stemOfOther = stem(diagram, changed, told, asked);
                if (stem.isPresent() && stemOfOther.isPresent()) {
                    compared++;
                    assertThat(stemOfOther).as("%s of %s", asked, values).isEqualTo(stem);
                }
            }
        }
        if (!askableInputs(diagram, samples.valuesFor(diagram)).isEmpty()) {
            assertThat(compared).isGreaterThan(SITUATIONS / 5);
        }
    }

    /// Lines follow no value, so that nothing can be measured, not even what follows from values
    /// that are told. But a polar is there to be read, and a direction that is told is drawn, as is
    /// which way a wind blows.
    @ParameterizedTest(name = "{0}")
    @MethodSource("sketches")
    void inASketchNothingCanBeMeasured(Diagram diagram) {
        var samples = new Samples(13);
        var lines = new HashMap<String, Set<List<String>>>();
        for (int i = 0; i < SITUATIONS; i++) {
            var values = samples.valuesFor(diagram);
            var derived = diagram.askable(values.keySet()).getLast();
            stem(diagram, values, askableInputs(diagram, values), derived)
                    .ifPresent(
                            stem ->
                                    lines.computeIfAbsent(seen(values), k -> new HashSet<>())
                                            .add(linesOf(stem)));
        }
        assertThat(lines).isNotEmpty();
        assertThat(lines.values()).allSatisfy(same -> assertThat(same).hasSize(1));
    }

    private static String seen(Map<String, Double> values) {
        return values.keySet().stream().sorted().toList()
                + " wind "
                + Math.signum(values.getOrDefault("headwind", 0.0));
    }

    private static List<String> linesOf(Drawing stem) {
        return DrawnSvg.of(stem).elements().stream()
                .filter(e -> Set.of("path", "circle").contains(e.getTagName()))
                .map(e -> e.getAttribute("d") + e.getAttribute("cx") + e.getAttribute("r"))
                .toList();
    }

    /// So a stem can be kept without the answer.
    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void aStemIsDrawnWithoutWhatIsAsked(Diagram diagram) {
        var samples = new Samples(14);
        int compared = 0;
        for (int i = 0; i < SITUATIONS; i++) {
            var values = samples.valuesFor(diagram);
            for (String asked : diagram.askable(values.keySet())) {
                var known = new HashMap<>(values);
                known.remove(asked);
                var told = askableInputs(diagram, known);
                var stem = stem(diagram, values, told, asked);
                if (stem.isPresent()) {
                    compared++;
                    assertThat(stem(diagram, known, told, asked)).as(asked).isEqualTo(stem);
                }
            }
        }
        assertThat(compared).isGreaterThan(SITUATIONS / 5);
    }

    /// In no text, title, description or attribute.
    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void theAskedNumberIsNowhereInTheFile(Diagram diagram) {
        var values = unusual(diagram.name());
        for (String asked : diagram.askable(values.keySet())) {
            var told = askableInputs(diagram, values);
            told.remove(asked);
            var situation = Situation.of(values, told, Set.of(asked));
            var stem = diagram.draw(situation, Purpose.STEM, "q", "en");
            var solution = DrawnSvg.of(diagram.draw(situation, Purpose.SOLUTION, "q", "en"));
            String number = askedNumber(solution);
            assertThat(stem.svg())
                    .as("%s %s", asked, number)
                    .doesNotContainPattern(
                            "(?<![\\d.])" + Pattern.quote(number) + "(?![\\d]|\\.\\d)")
                    .contains("?</text>");
        }
    }

    @Test
    void aDrawerCannotReadWhatIsAsked() {
        var diagram = GlidePath.kind();
        var values = new Values(Map.of(Term.HEIGHT, 600.0, Term.DISTANCE, 4800.0));
        var situation =
                Situation.of(
                        Map.of("height", 600.0, "distance", 4800.0),
                        Set.of("height"),
                        Set.of("distance"));

        var facts = new Facts(diagram, situation, values, Purpose.STEM);

        assertThat(facts.si(Term.HEIGHT)).isEqualTo(600);
        assertThatThrownBy(() -> facts.si(Term.DISTANCE))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("distance is not known");
    }

    private static String askedNumber(DrawnSvg solution) {
        return solution.elements("text").stream()
                .filter(text -> text.getAttribute("class").contains("asked"))
                .map(text -> Pattern.compile("[\\d.]*\\d").matcher(text.getTextContent()))
                .filter(Matcher::find)
                .map(Matcher::group)
                .findFirst()
                .orElseThrow(() -> new AssertionError("the solution tells no number"));
    }

    private static Optional<Drawing> stem(
            Diagram diagram, Map<String, Double> values, Set<String> told, String asked) {
        return Samples.draw(diagram, Situation.of(values, told, Set.of(asked)), Purpose.STEM);
    }

    /// Inputs that have a label, without what follows from them.
    private static Set<String> askableInputs(Diagram diagram, Map<String, Double> values) {
        var names = new HashSet<>(values.keySet());
        names.retainAll(diagram.askable());
        return names;
    }

    private static Set<String> names(Stream<String> names) {
        return names.collect(toSet());
    }

    /// Values whose digits occur in no coordinate by chance.
    private static Map<String, Double> unusual(String kind) {
        double kmh = 1 / 3.6;
        double degree = Math.PI / 180;
        return switch (kind) {
            case "glide-path" ->
                    Map.of(
                            "height", 617.0,
                            "distance", 3191.0,
                            "reserve", 153.0,
                            "headwind", 14.7 * kmh,
                            "airspeed", 38.3 * kmh,
                            "still-air-distance", 5273.0);
            case "polar-tangent" ->
                    Map.of(
                            "a", 0.035,
                            "b", -0.63,
                            "c", 3.93,
                            "maximum-speed", 55 * kmh,
                            "headwind", 19.3 * kmh,
                            "air-sink", 0.73);
            case "wind-triangle" ->
                    Map.of(
                            "course", 93 * degree,
                            "airspeed", 38.3 * kmh,
                            "wind-from", 347 * degree,
                            "wind-speed", 14.7 * kmh);
            case "forces-in-glide" -> Map.of("mass", 97.3, "glide-ratio", 8.37);
            case "forces-in-turn" -> Map.of("mass", 97.3, "bank", 37.3 * degree);
            case "circle-from-above" ->
                    Map.of(
                            "airspeed", 38.3 * kmh,
                            "bank", 27.3 * degree,
                            "wind-speed", 14.7 * kmh);
            case "reserve-descent" -> Map.of("sink-rate", 5.37);
            case "cloud-base" -> Map.of("temperature", 296.85, "dew-point", 284.52);
            case "altimeter-setting" ->
                    Map.of(
                            "setting", 102_370.0,
                            "correct-setting", 101_130.0,
                            "indicated-altitude", 1537.0);
            default -> Map.of("altitude", 2137.0);
        };
    }
}
