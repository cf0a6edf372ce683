package org.groundline.command;

import org.groundline.bank.BankLocation;
import org.groundline.bank.BankReport;
import org.groundline.bank.Questions;
import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Mixin;

import java.util.concurrent.Callable;

/// `bank check`: says what is in a bank and what is wrong with it.
@NullMarked
@Command(name = "check", description = "Says what is in a bank and what is wrong with it.")
final class BankCheckCommand implements Callable<Integer> {
    @Mixin private BankOptions options = new BankOptions();

    @Override
    public Integer call() throws Exception {
        try (BankLocation location = options.open()) {
            BankReport report = Questions.check(location.folder());
            switch (options.format()) {
                case JSON -> options.print(OutputFormat.json(report));
                case TEXT -> printText(report);
            }
            return report.isSound() ? ExitCode.OK : ExitCode.SOFTWARE;
        }
    }

    private void printText(BankReport report) {
        report.findings().forEach(finding -> options.complain(finding.text()));
        report.modules()
                .forEach(
                        (id, counts) ->
                                options.print(
                                        "%s: %d fixed, %d numeric"
                                                .formatted(id, counts.fixed(), counts.numeric())));
        options.print(
                "%d fixed and %d numeric questions, %d misconceptions, %d briefs; %d errors, %d warnings"
                        .formatted(
                                report.fixed(),
                                report.numeric(),
                                report.misconceptions(),
                                report.briefs(),
                                report.errors().size(),
                                report.findings().size() - report.errors().size()));
    }
}
