package org.groundline.diagram;

import java.io.Serial;

/// Why a file is no illustration.
public final class IllustrationFault extends Exception {
    @Serial private static final long serialVersionUID = 1L;

    private final int line;
    private final String problem;
    private final String remedy;

    IllustrationFault(int line, String problem, String remedy) {
        super("line %d: %s; %s".formatted(line, problem, remedy));
        this.line = line;
        this.problem = problem;
        this.remedy = remedy;
    }

    /// Counted from 1.
    public int line() {
        return line;
    }

    public String problem() {
        return problem;
    }

    public String remedy() {
        return remedy;
    }
}
