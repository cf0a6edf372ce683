package org.groundline.database;

import java.nio.ByteBuffer;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.UUID;

/// Makes the ids of rows.
public final class Ids {
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    public Ids(InstantSource clock) {
        this.clock = clock;
    }

    /// Returns a UUID of version 7 (RFC 9562 section 5.7): sorted by the millisecond it was made
    /// in, as indexes like it.
    public UUID next() {
        byte[] bits = new byte[16];
        random.nextBytes(bits);
        long millis = clock.millis();
        ByteBuffer buffer = ByteBuffer.wrap(bits);
        long high = (millis << 16) | 0x7000 | (buffer.getLong() & 0x0fff);
        long low = (buffer.getLong() & 0x3fff_ffff_ffff_ffffL) | 0x8000_0000_0000_0000L;
        return new UUID(high, low);
    }

    /// Returns 128 random bits (a UUID of version 4), for what is public or must not tell when it
    /// was made.
    public UUID random() {
        return UUID.randomUUID();
    }
}
