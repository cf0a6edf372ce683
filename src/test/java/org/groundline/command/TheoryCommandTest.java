package org.groundline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.formulary.Formulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import picocli.CommandLine;

import java.io.PrintWriter;
import java.io.StringWriter;

class TheoryCommandTest {
    private record Run(int exit, String out, String err) {
        JsonNode json() throws Exception {
            return new ObjectMapper().readTree(out);
        }
    }

    private static Run run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit =
                new CommandLine(new TheoryCommand())
                        .setOut(new PrintWriter(out))
                        .setErr(new PrintWriter(err))
                        .execute(arguments);
        return new Run(exit, out.toString(), err.toString());
    }

    /// FAA-H-8083-13B, page 3-12: at 60° of bank the wing carries twice its weight.
    @Test
    void aQuantityIsToldWithWhatWasReadAndItsSource() {
        Run run = run("load-factor", "--given", "bank=60°");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("bank: 60°\nload-factor: 2\nsource: ").contains("FAA");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void aQuantityIsJsonForPrograms() throws Exception {
        Run run =
                run(
                        "glide-distance",
                        "--format",
                        "json",
                        "--given",
                        "height=0.6 km,ground-speed=23km/h,descent-rate=1.2");

        // 600 m × 23 km/h ÷ 1.2 m/s, by hand
        assertThat(run.json().get("value").asDouble()).isCloseTo(3194.4, within(0.05));
        assertThat(run.json().get("unit").asText()).isEqualTo("m");
        assertThat(run.json().get("warnings")).isEmpty();
    }

    @Test
    void aValueOutsideItsSensibleRangeIsComputedWithAWarning() {
        Run run = run("glide-distance", "--given", "height=9km,ground-speed=23km/h,descent-rate=1");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("warning: height is ");
    }

    @Test
    void theListDescribesEveryQuantity() throws Exception {
        assertThat(run("list", "--format", "json").json()).hasSize(Formulary.list().size());
        assertThat(run("list").out())
                .contains("glide-distance: How far does this height carry over the ground?")
                .contains("takes height (m), ground-speed (km/h), descent-rate (m/s)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    glide-distnace | height=1              | There is no quantity “glide-distnace”
                    load-factor    | bank=60°,wind=3       | load-factor does not take wind. It takes bank (°).
                    load-factor    | wind=3                | load-factor does not take wind
                    load-factor    | bank=NaN              | bank: “NaN” is no number
                    load-factor    | bank=1e999            | bank:
                    load-factor    | bank=60kg             | bank: “kg” is a mass (kg), but the answer is an angle
                    load-factor    | bank=95°              | There is no answer for these values
                    glide-ratio    | airspeed=38km/h       | sink-rate missing. It takes airspeed (km/h), sink-rate (m/s).
                    """)
    void whatCannotBeComputedIsRefusedWithTheRemedy(String name, String given, String message) {
        Run run = run(name, "--given", given);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(message);
    }
}
