package org.groundline.command;

import org.groundline.bank.FixedQuestion;
import org.groundline.bank.NumericQuestion;
import org.groundline.bank.Question;
import org.groundline.bank.numeric.Evaluation;
import org.groundline.error.Refusal;
import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;

/// `bank evaluate`: a numeric question's answer for given values.
@NullMarked
@Command(name = "evaluate", description = "Computes a numeric question's answer for given values.")
final class BankEvaluateCommand implements Callable<Integer> {
    @Mixin private BankOptions options = new BankOptions();

    @Parameters(paramLabel = "ID", description = "The numeric question.")
    private String id = "";

    @Option(
            names = "--given",
            paramLabel = "name=value",
            split = ",",
            required = true,
            description =
                    "All values, with a decimal point: --given \"wind=15 km/h,height=600 m\".")
    private Map<String, String> given = new LinkedHashMap<>();

    @Override
    public Integer call() throws Exception {
        return options.withQuestions(bank -> print(evaluate(bank.question(id))));
    }

    private Evaluation evaluate(Question question) {
        return switch (question) {
            case NumericQuestion numeric -> numeric.evaluate(given);
            case FixedQuestion fixed ->
                    throw new Refusal.Invalid("'" + id + "' is a fixed question: no formula.");
        };
    }

    private void print(Evaluation evaluation) {
        switch (options.format()) {
            case JSON -> options.print(OutputFormat.json(evaluation));
            case TEXT -> {
                evaluation.steps().forEach(options::print);
                options.print("answer: " + evaluation.answer().toPlainString() + unit(evaluation));
                options.print(
                        "printed: " + evaluation.rounded().toPlainString() + unit(evaluation));
                if (!evaluation.decision().isEmpty()) {
                    options.print("decision: " + evaluation.decision());
                }
            }
        }
    }

    private static String unit(Evaluation evaluation) {
        return evaluation.unit().isEmpty() ? "" : " " + evaluation.unit();
    }
}
