package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.groundline.bank.numeric.Evaluation;
import org.groundline.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;

/// Every template of the shipped bank, computed for the inputs of values that are printed
/// elsewhere. The table is numeric-values.csv: *published* where a source prints the value, with
/// its place; *derived* where the value was computed by hand from the formula. A row is within half
/// the last printed digit, or within what its source column says.
class NumericTemplatesTest {
    private static final Path VALUES =
            Path.of(
                    System.getProperty("groundline.base", "."),
                    "src/test/resources/bank/numeric-values.csv");
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

    @Test
    void everyTemplateIsHeldAgainstAValue() throws Exception {
        try (var lines = Files.lines(VALUES)) {
            List<String> held = lines.skip(1).map(row -> row.split(",", 2)[0]).distinct().toList();
            var templates = new TreeSet<String>();
            BANK.all().stream()
                    .filter(NumericQuestion.class::isInstance)
                    .map(Question::id)
                    .forEach(templates::add);
            assertThat(held).containsExactlyInAnyOrderElementsOf(templates);
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
