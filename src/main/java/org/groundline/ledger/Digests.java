package org.groundline.ledger;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/// SHA-256, as bytes and as hexadecimal text.
public final class Digests {
    private Digests() {}

    /// Returns the SHA-256 of the parts one after the other.
    public static byte[] sha256(byte[]... parts) {
        try {
            var sha = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                sha.update(part);
            }
            return sha.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }

    /// Returns the SHA-256 of a text's UTF-8 bytes as 64 hexadecimal digits.
    public static String hex(String text) {
        return HexFormat.of().formatHex(sha256(text.getBytes(StandardCharsets.UTF_8)));
    }
}
