package org.groundline.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;

class SeededDrawTest {
    /// Our own output, kept: a change here needs a new version, or stored seeds change their
    /// meaning.
    @Test
    void aSeedDrawsWhatTheGoldenFileHolds() {
        assertThat(drawsOf(20_261_125)).isEqualTo(golden("draws-version-1.txt"));
        assertThat(SeededDraw.version()).isEqualTo(1);
    }

    @Test
    void everyNumberBelowTheBoundIsEquallyLikely() {
        var draw = new SeededDraw(1);
        int[] counts = new int[6];
        for (int i = 0; i < 600_000; i++) {
            counts[draw.below(6)]++;
        }
        // Standard deviation of a count is √(600 000 · 1/6 · 5/6) = 289; five of them are 1 443.
        for (int count : counts) {
            assertThat(count).isCloseTo(100_000, within(1_443));
        }
    }

    /// A draw by remainder or by the upper bits alone would give the middle third half of its
    /// share.
    @Test
    void aBoundNearTheTopOfItsRangeIsFairToo() {
        int bound = 1_610_612_736; // 3 · 2²⁹: 2³² is not a multiple of it
        var draw = new SeededDraw(2);
        int[] thirds = new int[3];
        for (int i = 0; i < 300_000; i++) {
            thirds[draw.below(bound) / (bound / 3)]++;
        }
        // Standard deviation √(300 000 · 1/3 · 2/3) = 258; five of them are 1 291.
        for (int third : thirds) {
            assertThat(third).isCloseTo(100_000, within(1_291));
        }
    }

    @Test
    void aBoundOfOneLeavesNoChoiceAndABoundBelowItIsRefused() {
        var draw = new SeededDraw(3);
        assertThat(draw.below(1)).isZero();
        assertThatThrownBy(() -> draw.below(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0");
    }

    @Test
    void shufflingKeepsTheElementsAndReachesEveryOrder() {
        var draw = new SeededDraw(4);
        var orders =
                IntStream.range(0, 1_000).mapToObj(i -> draw.shuffle(List.of(1, 2, 3, 4))).toList();
        assertThat(orders).allSatisfy(o -> assertThat(o).containsExactlyInAnyOrder(1, 2, 3, 4));
        assertThat(orders.stream().distinct()).hasSize(24);
    }

    @Test
    void aChildDoesNotDependOnWhatItsParentDrewBefore() {
        var fresh = new SeededDraw(5);
        var used = new SeededDraw(5);
        used.below(100);
        assertThat(used.childSeed("order")).isEqualTo(fresh.childSeed("order"));
        assertThat(fresh.childSeed("order")).isNotEqualTo(fresh.childSeed("values"));
        assertThat(fresh.childSeed("order")).isNotEqualTo(new SeededDraw(6).childSeed("order"));
    }

    private static String drawsOf(long seed) {
        var text = new StringBuilder();
        var draw = new SeededDraw(seed);
        for (int bound : List.of(2, 6, 10, 100, 1_000_000, Integer.MAX_VALUE)) {
            text.append("below ").append(bound).append(':');
            for (int i = 0; i < 8; i++) {
                text.append(' ').append(draw.below(bound));
            }
            text.append('\n');
        }
        text.append("shuffle: ").append(draw.shuffle(List.of("A", "B", "C", "D"))).append('\n');
        text.append("child värde: ").append(draw.childSeed("värde")).append('\n');
        return text.toString();
    }

    private static String golden(String name) {
        try (var file = SeededDrawTest.class.getResourceAsStream("/chance/" + name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
