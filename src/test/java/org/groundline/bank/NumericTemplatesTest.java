package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.groundline.bank.numeric.Evaluation;
import org.groundline.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/// Templates of the shipped bank, computed for the inputs of values that are printed elsewhere,
/// beside the worked examples that each carries. The table is numeric-values.csv: *published* where
/// a source prints the value, with its place; *derived* where the value was computed by hand from
/// the formula. A row is within half the last printed digit, or within what its source column says.
class NumericTemplatesTest {
    private static final Pattern QUANTITY = Pattern.compile("(?<number>[0-9.]+) ?(?<unit>.*)");

    private static final Questions BANK = Questions.load(Schemas.BANK);

    @ParameterizedTest(name = "{0} {1} gives {2} [{4}] {5}")
    @CsvFileSource(resources = "/bank/numeric-values.csv", numLinesToSkip = 1)
    void theTemplateReproducesThePrintedValue(
            String id,
            String inputs,
            String printed,
            String margin,
            String provenance,
            String source) {
        assertThat(provenance).isIn("published", "derived");
        assertThat(source).isNotBlank();
        Evaluation evaluation = ((NumericQuestion) BANK.question(id)).evaluate(given(inputs));
        double computed = Units.get(evaluation.unit()).toSi(evaluation.answer().doubleValue());
        assertThat(computed).isCloseTo(si(printed), within(si(margin)));
    }

    /// Loading the bank has computed them; here it is only whether there are enough.
    @Test
    void everyTemplateCarriesTwoDifferentWorkedExamples() {
        for (Question question : BANK.all()) {
            if (question instanceof NumericQuestion numeric) {
                assertThat(numeric.source().worked().stream().map(w -> w.given()).distinct())
                        .as(question.id())
                        .hasSizeGreaterThanOrEqualTo(2);
            }
        }
    }

    private static Map<String, String> given(String inputs) {
        var given = new LinkedHashMap<String, String>();
        for (String input : inputs.split(";")) {
            String[] pair = input.strip().split("=", 2);
            given.put(pair[0], pair[1]);
        }
        return given;
    }

    private static double si(String quantity) {
        var parts = QUANTITY.matcher(quantity);
        assertThat(parts.matches()).as(quantity).isTrue();
        return Units.get(parts.group("unit")).toSi(Double.parseDouble(parts.group("number")));
    }
}
