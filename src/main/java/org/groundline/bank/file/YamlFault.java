package org.groundline.bank.file;

import java.io.Serial;

/// Why a file as a whole cannot be read. It never leaves this package: it becomes a finding.
final class YamlFault extends Exception {
    @Serial private static final long serialVersionUID = 1L;

    private final Rule rule;
    private final int line;
    private final String remedy;

    YamlFault(Rule rule, int line, String problem, String remedy) {
        super(problem);
        this.rule = rule;
        this.line = line;
        this.remedy = remedy;
    }

    void noteIn(Notes notes) {
        notes.add(rule, line, String.valueOf(getMessage()), remedy);
    }
}
