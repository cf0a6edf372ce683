package org.groundline.bank.numeric.formula;

import java.io.Serial;

/// Why a formula cannot be read, and what its author can do about it.
public final class FormulaFault extends RuntimeException {
    @Serial private static final long serialVersionUID = 1L;
    private final String remedy;

    FormulaFault(String problem, String remedy) {
        super(problem, null, false, false);
        this.remedy = remedy;
    }

    public String problem() {
        return String.valueOf(getMessage());
    }

    public String remedy() {
        return remedy;
    }
}
