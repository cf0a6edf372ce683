package org.groundline.bank.file;

import java.util.ArrayList;
import java.util.List;

/// Collects the findings of one file.
public final class Notes {
    private final String file;
    private final List<Finding> findings = new ArrayList<>();
    private long errors;

    public Notes(String file) {
        this.file = file;
    }

    /// Notes a finding whose message reads "problem; remedy".
    public void add(Rule rule, int line, String problem, String remedy) {
        String message = problem + "; " + remedy;
        var finding = new Finding(rule.severity().word(), file, line, rule.word(), message);
        findings.add(finding);
        errors += finding.isError() ? 1 : 0;
    }

    /// Counted along the way, as readers ask for it at each of perhaps thousands of questions.
    public long errors() {
        return errors;
    }

    public String file() {
        return file;
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }
}
