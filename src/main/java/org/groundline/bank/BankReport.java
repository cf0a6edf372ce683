package org.groundline.bank;

import org.groundline.bank.file.Finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What a check of a bank found. Only sound questions and briefs are counted.
///
/// @param modules counts by module, in the order of the course
public record BankReport(
        int fixed,
        int numeric,
        int misconceptions,
        int briefs,
        Map<String, Counts> modules,
        List<Finding> findings) {
    public BankReport {
        modules = Collections.unmodifiableMap(new LinkedHashMap<>(modules));
        findings = List.copyOf(findings);
    }

    /// How many questions of each kind there are.
    public record Counts(int fixed, int numeric) {
        private static Counts of(List<Question> questions) {
            int fixed = (int) questions.stream().filter(FixedQuestion.class::isInstance).count();
            return new Counts(fixed, questions.size() - fixed);
        }
    }

    static BankReport of(BankCheck check) {
        Counts all = Counts.of(check.questions());
        Map<String, Counts> modules = new LinkedHashMap<>();
        for (Module module : check.course().modules()) {
            modules.put(module.id(), Counts.of(ofModule(check, module.id())));
        }
        return new BankReport(
                all.fixed(),
                all.numeric(),
                check.misconceptions().size(),
                check.briefs().size(),
                modules,
                check.findings());
    }

    private static List<Question> ofModule(BankCheck check, String module) {
        return check.questions().stream().filter(q -> q.module().equals(module)).toList();
    }

    /// Whether the bank may be loaded.
    public boolean isSound() {
        return errors().isEmpty();
    }

    public List<Finding> errors() {
        return findings.stream().filter(Finding::isError).toList();
    }
}
