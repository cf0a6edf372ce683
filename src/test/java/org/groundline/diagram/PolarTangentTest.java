package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.groundline.theory.Polar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

import java.util.List;
import java.util.Set;

/// On an invented polar of a paraglider, up to 55 km/h.
class PolarTangentTest {
    private static final Polar POLAR = new Polar(0.035, -0.63, 3.93);

    /// The axes are read back from their numbers, the touching point from the drawing alone.
    @ParameterizedTest(name = "headwind {0} km/h, air sinking {1} m/s")
    @CsvSource({"0, 0", "20, 0", "-20, 0", "0, 1.5", "15, 0.5", "-10, 1", "10, -0.8"})
    void theTangentTouchesThePolarAtTheSpeedToFly(double headwind, double airSink) {
        var svg = polar("headwind=" + headwind + " km/h", "air-sink=" + airSink + " m/s").drawn();

        var touch = svg.dot("touching-point");
        double speed = value(svg, "middle", touch.x(), true);
        double sinkRate = value(svg, "end", touch.y(), false);

        double expected = POLAR.speedToFly(headwind / 3.6, airSink);
        assertThat(speed / 3.6).isCloseTo(expected, within(0.02));
        assertThat(sinkRate).isCloseTo(POLAR.sinkRate(expected), within(0.01));
    }

    @ParameterizedTest(name = "headwind {0} km/h, air sinking {1} m/s")
    @CsvSource({"0, 0", "20, 0", "-20, 0", "0, 1.5", "15, 0.5"})
    void theTangentStartsAtTheShiftedOriginAndNeverCutsThePolar(double headwind, double airSink) {
        var svg = polar("headwind=" + headwind + " km/h", "air-sink=" + airSink + " m/s").drawn();

        var tangent = svg.span("tangent");
        assertThat(value(svg, "middle", tangent.from().x(), true)).isCloseTo(headwind, within(0.1));
        assertThat(value(svg, "end", tangent.from().y(), false)).isCloseTo(-airSink, within(0.01));
        double slope = tangent.way().y() / tangent.way().x();
        assertThat(svg.points("polar"))
                .allSatisfy(
                        p -> {
                            double onTangent =
                                    tangent.from().y() + slope * (p.x() - tangent.from().x());
                            assertThat(p.y()).isGreaterThan(onTangent - 0.02);
                        });
    }

    /// A student's reading may be 1.5 km/h off; half the way between two ticks is less.
    @Test
    void theAxisOfSpeedsIsFineEnoughToBeRead() {
        var svg = polar().stemAsking("speed-to-fly");
        var ticks =
                svg.part("ticks").stream()
                        .map(DrawnSvg::points)
                        .filter(p -> p.getFirst().x() == p.getLast().x())
                        .map(p -> value(svg, "middle", p.getFirst().x(), true))
                        .sorted()
                        .toList();

        assertThat(ticks).hasSizeGreaterThan(20);
        for (int i = 1; i < ticks.size(); i++) {
            assertThat((ticks.get(i) - ticks.get(i - 1)) / 2).isLessThan(1.5);
        }
    }

    @Test
    void aStemShowsTheCurveAndTheAxesButNoTangent() {
        var svg = polar("headwind=20 km/h").stemAsking("speed-to-fly");

        assertThat(svg.points("polar")).hasSizeGreaterThan(20);
        assertThat(svg.part("grid")).isNotEmpty();
        assertThat(List.of("tangent", "touching-point", "headwind", "speed-to-fly"))
                .allSatisfy(part -> assertThat(svg.part(part)).isEmpty());
        assertThat(svg.texts()).contains("speed to fly ?", "headwind 20\u202Fkm/h");
    }

    @Test
    void theCurveIsToldInWordsForWhoCannotSeeIt() {
        var told = polar().drawing(Purpose.STEM, Set.of("speed-to-fly")).description();

        assertThat(told)
                .contains("at 35\u202Fkm/h it sinks 1.11\u202Fm/s")
                .contains("at 55\u202Fkm/h it sinks 2.47\u202Fm/s")
                .doesNotContain("at 30\u202Fkm/h");
    }

    @Test
    void aTangentBeyondTheHighestSpeedIsRefused() {
        var against = polar("headwind=40 km/h");

        assertThatThrownBy(against::drawn)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("beyond its highest speed");
    }

    private static Solution polar(String... more) {
        var given = new java.util.ArrayList<>(List.of("a=0.035 s/m", "b=-0.63", "c=3.93 m/s"));
        given.add("maximum-speed=55 km/h");
        given.addAll(List.of(more));
        return Solution.of("polar-tangent", given.toArray(String[]::new));
    }

    /// The value at a position, from two numbers at that axis: those across are centred on their
    /// lines, those upwards end before them.
    private static double value(DrawnSvg svg, String end, double position, boolean across) {
        var numbers =
                svg.elements("text").stream()
                        .filter(t -> t.getAttribute("class").equals(end))
                        .filter(t -> t.getTextContent().matches("−?[\\d.]+"))
                        .toList();
        double first = number(numbers.getFirst());
        double last = number(numbers.getLast());
        double start = place(numbers.getFirst(), across);
        double stop = place(numbers.getLast(), across);
        return first + (position - start) / (stop - start) * (last - first);
    }

    private static double place(Element text, boolean across) {
        var box = WideFont.box(text);
        // Letters stand on the line at 12 of 17 units of their room, which is centred.
        return across
                ? (box.left() + box.right()) / 2
                : DrawnSvg.number(text, "y") - Lettering.ASCENT + Lettering.HEIGHT / 2;
    }

    private static double number(Element text) {
        return Double.parseDouble(text.getTextContent().replace('−', '-'));
    }
}
