package org.groundline.ledger;

import static java.util.Objects.requireNonNullElse;

import org.groundline.database.Ids;
import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;
import org.slf4j.MDC;

import java.time.InstantSource;
import java.util.Optional;

/// Notes who did what, in the transaction that did it. Holds ids and words of closed lists, no
/// names and no free text.
public final class Audit {
    /// The key under which the request's id lies in the logging context.
    public static final String REQUEST = "request";

    private final Ids ids;
    private final InstantSource clock;

    public Audit(Ids ids, InstantSource clock) {
        this.ids = ids;
        this.clock = clock;
    }

    /// Notes one action.
    ///
    /// @param actor who did it; empty for the program itself
    /// @param subject whom it concerns, if anybody
    /// @param action a word of the permissions file, or of the program's own jobs
    /// @param object the kind and id of what was touched
    public void write(
            DSLContext tx,
            SchoolId school,
            Optional<SubjectId> actor,
            Optional<SubjectId> subject,
            String action,
            String object) {
        new AuditRepository(tx)
                .insert(
                        school,
                        ids.next(),
                        clock.instant(),
                        new AuditRepository.Deed(
                                actor,
                                subject,
                                action,
                                object,
                                requireNonNullElse(MDC.get(REQUEST), "")));
    }
}
