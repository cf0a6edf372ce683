package org.groundline.error;

import java.io.Serial;

/// Why the sender of a request cannot have what they asked for, in words for the sender: what was
/// wrong, where, and what to do. Thrown where the input enters, before anything is changed; nothing
/// is lost by it.
public abstract sealed class Refusal extends RuntimeException {
    @Serial private static final long serialVersionUID = 1L;

    private Refusal(String message) {
        super(message, null, false, false);
    }

    /// The request itself is wrong: a number that cannot be read, a field left empty.
    public static final class Invalid extends Refusal {
        @Serial private static final long serialVersionUID = 1L;
        private final String field;

        public Invalid(String message) {
            this("", message);
        }

        public Invalid(String field, String message) {
            super(message);
            this.field = field;
        }

        /// The field at fault, or an empty text where it is the request as a whole.
        public String field() {
            return field;
        }
    }

    /// Who is asking is not known: not logged in, or the log-in has run out.
    public static final class Unknown extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public Unknown(String message) {
            super(message);
        }
    }

    /// Who is asking is known and may not do this.
    public static final class Forbidden extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public Forbidden(String message) {
            super(message);
        }
    }

    /// There is no such thing, or none that the sender may know of.
    public static final class NotFound extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public NotFound(String message) {
            super(message);
        }
    }

    /// The thing is there, but its state does not allow this (any more).
    public static final class Conflict extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public Conflict(String message) {
            super(message);
        }
    }

    /// The same key came before with another content.
    public static final class Mismatch extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public Mismatch(String message) {
            super(message);
        }
    }

    /// The change is based on an older state than the present one.
    public static final class Stale extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public Stale(String message) {
            super(message);
        }
    }

    /// The change must say which state it is based on, and does not.
    public static final class Unconditional extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public Unconditional(String message) {
            super(message);
        }
    }

    /// Tried too often; later it may be tried again.
    public static final class TooMany extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public TooMany(String message) {
            super(message);
        }
    }

    /// The server cannot take this now; the sender keeps it and tries again.
    public static final class Busy extends Refusal {
        @Serial private static final long serialVersionUID = 1L;

        public Busy(String message) {
            super(message);
        }
    }
}
