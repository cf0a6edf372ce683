package org.groundline.psychometrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.groundline.psychometrics.Proportion.Cluster;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.Collections;
import java.util.List;

class ProportionTest {
    /// The first three rows: R. G. Newcombe, Statistics in Medicine 17, 1998, table I, method 3
    /// (from memory), computed again with R 4 `prop.test(correct = FALSE)`. The others: computed
    /// with R only. Printed to four or three decimals.
    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource(
            textBlock =
                    """
                    81, 263, 0.2553, 0.3662, 0.00005
                     0,  20, 0,      0.1611, 0.00005
                     1,  29, 0.0061, 0.1718, 0.00005
                     7,  10, 0.397,  0.892,  0.0005
                    21,  30, 0.521,  0.833,  0.0005
                    70, 100, 0.604,  0.781,  0.0005
                    """)
    void wilsonsIntervalIsThePublishedOne(
            int hits, int cases, double low, double high, double tolerance) {
        Interval interval = Proportion.wilson(hits, cases);

        assertThat(interval.low()).isCloseTo(low, within(tolerance));
        assertThat(interval.high()).isCloseTo(high, within(tolerance));
    }

    @Test
    void itemsThatHangTogetherSayNoMoreThanTheirStudents() {
        var allOrNothing =
                List.of(
                        new Cluster(10, 10),
                        new Cluster(10, 10),
                        new Cluster(0, 10),
                        new Cluster(0, 10));

        Interval clustered = Proportion.clustered(allOrNothing);

        assertThat(clustered).isEqualTo(Proportion.wilson(2, 4));
    }

    @Test
    void itemsThatAreSpreadEvenlyCountAsManyAsThereAre() {
        List<Cluster> even = Collections.nCopies(8, new Cluster(3, 10));

        assertThat(Proportion.clustered(even)).isEqualTo(Proportion.wilson(24, 80));
    }

    /// By hand: r = 12/30, Σ(x − r n)² = 4² + 0² + 4² = 32 with n = 10 each, v = 3/2 · 32/900 =
    /// 0.05333, r(1 − r)/v = 4.5.
    @Test
    void theEffectiveSizeIsTheOneComputedByHand() {
        Interval clustered =
                Proportion.clustered(
                        List.of(new Cluster(8, 10), new Cluster(4, 10), new Cluster(0, 10)));
        Interval expected = Proportion.wilson(0.4 * 4.5, 4.5);

        assertThat(clustered.low()).isCloseTo(expected.low(), within(1e-12));
        assertThat(clustered.high()).isCloseTo(expected.high(), within(1e-12));
    }

    @Test
    void aShareWithoutCasesIsRefused() {
        assertThatThrownBy(() -> Proportion.wilson(0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Proportion.wilson(3, 2)).hasMessageContaining("3.0 of 2.0");
        assertThatThrownBy(() -> Proportion.clustered(List.of(new Cluster(1, 2))))
                .hasMessageContaining("not 1");
    }
}
