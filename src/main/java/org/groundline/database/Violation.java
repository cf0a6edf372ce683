package org.groundline.database;

import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;
import org.postgresql.util.PSQLException;
import org.postgresql.util.ServerErrorMessage;

import java.io.Serial;

/// A rule that the data must keep was about to be broken: a unique key, a check, a foreign key.
/// Carries the rule's name, so that a door can say in its own words what that means.
public final class Violation extends RuntimeException {
    @Serial private static final long serialVersionUID = 1L;
    private final String constraint;

    private Violation(String constraint, DataAccessException cause) {
        super("broke the rule " + constraint, cause);
        this.constraint = constraint;
    }

    /// The name of the constraint or unique index.
    public String constraint() {
        return constraint;
    }

    static RuntimeException translated(DataAccessException e) {
        String constraint = constraintOf(e);
        return constraint == null ? e : new Violation(constraint, e);
    }

    private static @Nullable String constraintOf(DataAccessException e) {
        PSQLException cause = e.getCause(PSQLException.class);
        ServerErrorMessage message = cause == null ? null : cause.getServerErrorMessage();
        boolean integrity = cause != null && String.valueOf(cause.getSQLState()).startsWith("23");
        return integrity && message != null ? message.getConstraint() : null;
    }
}
