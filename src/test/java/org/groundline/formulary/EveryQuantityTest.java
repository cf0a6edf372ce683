package org.groundline.formulary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// What holds for each quantity, whatever it computes.
class EveryQuantityTest {
    private static final double[] AT_THE_EDGE = {
        0,
        -0.0,
        1,
        -1,
        1e-300,
        -1e-300,
        1e-12,
        1e-9,
        1e9,
        -1e9,
        1e12,
        -1e12,
        1e300,
        -1e300,
        Math.PI / 2,
        Math.nextDown(Math.PI / 2),
        -Math.PI / 2,
        Double.MIN_VALUE,
        Double.MAX_VALUE
    };

    static List<Quantity> quantities() {
        return Formulary.list();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("quantities")
    void whatIsNoNumberIsRefusedWithItsValue(Quantity quantity) {
        for (int i = 0; i < quantity.inputs().size(); i++) {
            for (double none : List.of(Double.NaN, Double.POSITIVE_INFINITY)) {
                double[] si = middles(quantity);
                si[i] = none;
                assertThatIllegalArgumentException()
                        .as("%s of %s", quantity.inputs().get(i).name(), quantity.name())
                        .isThrownBy(() -> quantity.compute(si))
                        .withMessageContaining(String.valueOf(none));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("quantities")
    void whatIsNotRefusedIsANumber(Quantity quantity) {
        var random = RandomGeneratorFactory.of("L64X128MixRandom").create(20_240_601);
        int computed = 0;
        for (int i = 0; i < 4_000; i++) {
            double[] si = draw(quantity, random);
            var answer = answer(quantity, si);
            if (answer.isPresent()) {
                computed++;
                assertThat(answer.getAsDouble()).as("%s %s", quantity.name(), si).isFinite();
            }
        }
        assertThat(computed).isPositive();
    }

    private static OptionalDouble answer(Quantity quantity, double... si) {
        try {
            return OptionalDouble.of(quantity.compute(si).si());
        } catch (IllegalArgumentException refused) {
            return OptionalDouble.empty();
        }
    }

    /// Each value sensible by half, at an edge of the numbers otherwise.
    private static double[] draw(Quantity quantity, RandomGenerator random) {
        double[] si = new double[quantity.inputs().size()];
        for (int i = 0; i < si.length; i++) {
            var input = quantity.inputs().get(i);
            si[i] =
                    random.nextBoolean()
                            ? input.unit().toSi(random.nextDouble(input.low(), input.high()))
                            : AT_THE_EDGE[random.nextInt(AT_THE_EDGE.length)];
        }
        return si;
    }

    private static double[] middles(Quantity quantity) {
        return quantity.inputs().stream()
                .mapToDouble(input -> input.unit().toSi((input.low() + input.high()) / 2))
                .toArray();
    }
}
