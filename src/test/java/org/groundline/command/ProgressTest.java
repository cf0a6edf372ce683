package org.groundline.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;

class ProgressTest {
    private static final long TENTH_OF_A_SECOND = 100_000_000;

    private final List<String> told = new ArrayList<>();
    private long now = Long.MAX_VALUE - 5 * TENTH_OF_A_SECOND;

    /// The clock starts shortly before it runs over, as a nano clock may.
    @Test
    void progressIsToldEveryTwoSecondsAndAtTheEnd() {
        Progress progress = new Progress(1050, () -> now, told::add);
        for (int i = 0; i < 1050; i++) {
            now += i < 50 ? TENTH_OF_A_SECOND : 0;
            progress.oneMore();
        }
        assertThat(told).containsExactly("20 of 1,050", "40 of 1,050", "1,050 of 1,050");
    }
}
