package org.groundline.school;

import org.groundline.ledger.Digests;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;

/// Makes tokens that let their holder in: 256 random bits, in letters that an address may carry.
/// Whoever hands one out keeps its digest alone, so that reading the database lets nobody in.
final class Tokens {
    private static final int BYTES = 32;

    private final SecureRandom random = new SecureRandom();

    String next() {
        byte[] bits = new byte[BYTES];
        random.nextBytes(bits);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
    }

    /// The SHA-256 of a token, or of another text that is looked up without being kept.
    static byte[] digest(String text) {
        return Digests.sha256(text.getBytes(StandardCharsets.UTF_8));
    }
}
