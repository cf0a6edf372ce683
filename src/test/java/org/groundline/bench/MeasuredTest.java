package org.groundline.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MeasuredTest {
    @Test
    void aSpeedIsToldWithTheLeastItShouldBe() {
        var posing = new Measured("posing", "items a second", 123456.7, 89.1, Bound.AT_LEAST, 1e5);
        assertThat(posing.text())
                .isEqualTo("posing: 123,457 ± 89 items a second; the mark is at least 100,000");
    }

    @Test
    void aTimeIsToldWithTheMostItMayBe() {
        var loading = new Measured("loading", "s", 0.4567, 0.0123, Bound.AT_MOST, 0.5);
        assertThat(loading.text()).isEqualTo("loading: 0.46 ± 0.01 s; the mark is at most 0.5");
        var full = new Measured("loading", "s", 1.2, 0.1, Bound.AT_MOST, 2);
        assertThat(full.text()).isEqualTo("loading: 1.20 ± 0.10 s; the mark is at most 2");
    }
}
