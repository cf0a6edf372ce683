package org.groundline.bank.numeric.check;

import org.groundline.bank.numeric.draw.Given;
import org.groundline.bank.numeric.formula.NoAnswer;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.TemplateSource.WorkedSource;
import org.groundline.bank.numeric.working.Parts;
import org.groundline.measure.DecimalConvention;
import org.groundline.measure.Reading.Read;
import org.groundline.measure.Reading.Unreadable;
import org.groundline.measure.Rounding;
import org.groundline.measure.TypedNumber;

import java.util.List;
import java.util.OptionalDouble;

/// Recomputes the worked examples of a template.
public record WorkedCheck(Parts parts, Faults faults) {
    /// Notes each example that is incomplete or does not come out; there must be at least one.
    public void check(List<WorkedSource> examples) {
        if (examples.isEmpty()) {
            faults.add("worked", "there is no worked example", "add one with its source");
        }
        for (int i = 0; i < examples.size(); i++) {
            check("worked[%d]".formatted(i), examples.get(i));
        }
    }

    private void check(String at, WorkedSource example) {
        if (example.source().isBlank()) {
            faults.add(at + ".source", "it is empty", "name the source, or say derived");
        }
        var given = Given.read(example.given(), parts.space(), parts.told());
        for (var problem : given.problems()) {
            faults.add(
                    "%s.given.%s".formatted(at, problem.getKey()),
                    problem.getValue(),
                    "give each value that is told, once and with its unit");
        }
        var answer = read(at + ".answer", example.answer());
        given.values()
                .ifPresent(
                        values ->
                                answer.ifPresent(
                                        a -> compare(at, example, Given.array(values), a)));
    }

    private void compare(String at, WorkedSource example, double[] values, double expected) {
        try {
            double computed = parts.working().solve(values).answer();
            double within =
                    example.within()
                            .map(text -> read(at + ".within", text).orElse(Double.NaN))
                            .orElse(parts.goal().tolerance().of(computed));
            if (Math.abs(computed - expected) > within) {
                faults.add(
                        at + ".answer",
                        "the formula gives %s, the example says %s"
                                .formatted(
                                        parts.goal()
                                                .unit()
                                                .print(Rounding.significant(computed, 6)),
                                        example.answer()),
                        "correct the formula or the example");
            }
        } catch (NoAnswer none) {
            faults.add(at + ".given", none.reason(), "give values that have an answer");
        }
    }

    private OptionalDouble read(String at, String text) {
        return switch (TypedNumber.read(text, parts.goal().unit(), DecimalConvention.DOT)) {
            case Read read -> OptionalDouble.of(read.value().doubleValue());
            case Unreadable unreadable -> {
                faults.add(at, unreadable.why(), "write it like the answer");
                yield OptionalDouble.empty();
            }
        };
    }
}
