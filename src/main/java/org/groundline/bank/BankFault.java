package org.groundline.bank;

import org.groundline.bank.file.Finding;

import java.io.Serial;
import java.util.List;
import java.util.stream.Collectors;

/// A bank that does not load; the message lists every error with file, line and remedy.
public final class BankFault extends RuntimeException {
    @Serial private static final long serialVersionUID = 1L;

    private final transient List<Finding> findings;

    BankFault(List<Finding> errors) {
        super(errors.stream().map(Finding::text).collect(Collectors.joining("\n")));
        this.findings = List.copyOf(errors);
    }

    public List<Finding> findings() {
        return findings;
    }
}
