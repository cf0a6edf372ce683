package org.groundline.ledger;

import org.groundline.database.Ids;
import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;

import java.nio.ByteBuffer;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/// Writes entries, in the transaction of what they record. An entry's text is canonical JSON (RFC 8785) of
///
///     {"actor": c, "entered": t, "facts": {…}, "format": 1, "happened": t, "kind": k, "school": id, "subject": c}
///
/// where a person is a commitment c = SHA-256(salt ‖ subject id): whoever holds the salt can show whom an entry is
/// about, nobody else can guess it, and deleting the salt leaves the entry as it is.
public final class Ledger {
    private static final int FORMAT = 1;
    private static final int SALT_BYTES = 16;

    private final Ids ids;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    public Ledger(Ids ids, InstantSource clock) {
        this.ids = ids;
        this.clock = clock;
    }

    /// Appends an entry.
    public void write(DSLContext tx, SchoolId school, Entry entry) {
        UUID id = ids.next();
        Instant entered = clock.instant().truncatedTo(ChronoUnit.MICROS);
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("format", FORMAT);
        body.put("school", school.value().toString());
        body.put("kind", entry.kind().word());
        body.put("happened", entry.happenedAt().truncatedTo(ChronoUnit.MICROS).toString());
        body.put("entered", entered.toString());
        body.put("facts", entry.facts());
        var subject = entry.subject().map(this::commitTo);
        var actor = entry.actor().map(this::commitTo);
        subject.ifPresent(c -> body.put("subject", c.hex()));
        actor.ifPresent(c -> body.put("actor", c.hex()));
        var rows = new LedgerRepository(tx);
        rows.insert(school, id, entry, entered, CanonicalJson.of(body));
        subject.ifPresent(c -> rows.insertSalt(school, id, "subject", c));
        actor.ifPresent(c -> rows.insertSalt(school, id, "actor", c));
    }

    private Commitment commitTo(SubjectId subject) {
        byte[] salt = new byte[SALT_BYTES];
        random.nextBytes(salt);
        return Commitment.of(subject, HexFormat.of().formatHex(salt));
    }

    /// A person as an entry names them.
    ///
    /// @param salt 16 random bytes as hexadecimal text
    /// @param hex SHA-256(salt ‖ subject id) as hexadecimal text
    record Commitment(SubjectId subject, String salt, String hex) {
        static Commitment of(SubjectId subject, String salt) {
            UUID id = subject.value();
            byte[] bits =
                    ByteBuffer.allocate(16)
                            .putLong(id.getMostSignificantBits())
                            .putLong(id.getLeastSignificantBits())
                            .array();
            byte[] digest = Digests.sha256(HexFormat.of().parseHex(salt), bits);
            return new Commitment(subject, salt, HexFormat.of().formatHex(digest));
        }
    }
}
