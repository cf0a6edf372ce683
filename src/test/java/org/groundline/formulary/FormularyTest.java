package org.groundline.formulary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FormularyTest {
    @Test
    void anInputOutsideItsSensibleRangeIsComputedWithAWarning() {
        var distance = Formulary.find("glide-distance").orElseThrow();

        var outcome = distance.compute(6000, 10, 1);

        assertThat(outcome.si()).isCloseTo(60_000, within(1e-6));
        assertThat(outcome.warnings()).singleElement().asString().startsWith("height is 6000");
    }
}
