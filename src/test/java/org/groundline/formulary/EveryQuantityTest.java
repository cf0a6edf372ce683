package org.groundline.formulary;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.SplittableRandom;

/// What holds for each quantity that is listed.
class EveryQuantityTest {
    private static final int TRIES = 5_000;
    private static final List<Double> NASTY =
            List.of(
                    0.0,
                    -0.0,
                    1e-320,
                    -1e-320,
                    1e-12,
                    1e12,
                    -1e12,
                    1e308,
                    -1e308,
                    Double.NaN,
                    Double.POSITIVE_INFINITY,
                    Double.NEGATIVE_INFINITY);

    static List<Quantity> quantities() {
        return Formulary.list();
    }

    @ParameterizedTest
    @MethodSource("quantities")
    void wellWithinItsRangesItIsComputedWithoutAWarning(Quantity quantity) {
        double[] sensible = quantity.inputs().stream().mapToDouble(i -> between(i, 0.6)).toArray();

        var outcome = quantity.compute(sensible);

        assertThat(outcome.si()).isFinite();
        assertThat(outcome.warnings()).isEmpty();
    }

    /// From within the ranges, from their edges, and from what no one should give.
    @ParameterizedTest
    @MethodSource("quantities")
    void whateverIsGivenTheResultIsANumberOrARefusalThatNamesTheFault(Quantity quantity) {
        var random = new SplittableRandom(quantity.name().hashCode());
        for (int i = 0; i < TRIES; i++) {
            double[] si = quantity.inputs().stream().mapToDouble(in -> any(in, random)).toArray();
            try {
                assertThat(quantity.compute(si).si()).isFinite();
            } catch (IllegalArgumentException refusal) {
                assertThat(refusal).hasMessageMatching("(?s).+ must .+, but is .+");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("quantities")
    void itNamesWhereItComesFrom(Quantity quantity) {
        assertThat(quantity.source()).isNotBlank();
    }

    private static double any(Input input, SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> NASTY.get(random.nextInt(NASTY.size()));
            case 1 -> between(input, random.nextInt(2));
            default -> between(input, random.nextDouble(-0.5, 1.5));
        };
    }

    private static double between(Input input, double share) {
        return input.unit().toSi(input.low() + share * (input.high() - input.low()));
    }
}
