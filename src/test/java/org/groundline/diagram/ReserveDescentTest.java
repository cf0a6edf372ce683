package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReserveDescentTest {
    /// h = v² / (2 g), computed by hand. A person of 1.75 m is a unit that the picture states.
    @ParameterizedTest(name = "{0} m/s")
    @CsvSource({"5.5, 1.54", "6.8, 2.36", "9, 4.13"})
    void thePlatformIsAsHighBesideThePersonAsTheJump(double sinkRate, double jump) {
        var svg = Solution.of("reserve-descent", "sink-rate=" + sinkRate + " m/s").drawn();

        double metre = personTall(svg) / 1.75;

        assertThat(svg.span("equal-jump-height").length() / metre).isCloseTo(jump, within(0.01));
        assertThat(svg.texts()).contains("jump from " + jump + "\u202Fm");
    }

    /// From the feet to the top of the head.
    private static double personTall(DrawnSvg svg) {
        var head =
                svg.part("jumper").stream()
                        .filter(e -> e.getTagName().equals("circle"))
                        .findFirst()
                        .orElseThrow();
        double feet = svg.points("platform").getFirst().y();
        return feet - DrawnSvg.number(head, "cy") + DrawnSvg.number(head, "r");
    }
}
