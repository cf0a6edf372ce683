package org.groundline.bank.file;

import java.util.ArrayList;
import java.util.List;

/// Collects the findings of one file.
public final class Notes {
    private final String file;
    private final List<Finding> findings = new ArrayList<>();

    public Notes(String file) {
        this.file = file;
    }

    /// Notes a finding whose message reads "problem; remedy".
    public void add(Rule rule, int line, String problem, String remedy) {
        String message = problem + "; " + remedy;
        findings.add(new Finding(rule.severity().word(), file, line, rule.word(), message));
    }

    public long errors() {
        return findings.stream().filter(Finding::isError).count();
    }

    public String file() {
        return file;
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }
}
