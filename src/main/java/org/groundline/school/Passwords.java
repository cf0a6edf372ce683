package org.groundline.school;

import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.groundline.error.Refusal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Base64;
import java.util.Optional;

/// Hashes passwords with Argon2id (RFC 9106) and checks them. The parameters stand in the hash, so
/// that older hashes can still be checked when they are raised. Parameters: 19 MiB, two passes, one
/// lane, as the OWASP password storage guidance gives (from memory).
final class Passwords {
    static final int SHORTEST = 12;
    private static final int LONGEST = 256;
    private static final int MEMORY_KIB = 19 * 1024;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;

    private static final int PRINTED_MEMORY_KIB = 64;
    private static final int PRINTED_PASSES = 1;

    private final SecureRandom random = new SecureRandom();
    private final Optional<String> printed;

    Passwords() {
        this(Optional.empty());
    }

    private Passwords(Optional<String> printed) {
        this.printed = printed;
    }

    /// Hashes one password, which is printed for everybody, at next to no cost; every other one as
    /// usual.
    static Passwords withPrinted(String printed) {
        return new Passwords(Optional.of(printed));
    }

    /// Checked where an unknown address logs in, so that it takes as long as a known one.
    private static final String DECOY =
            new Passwords()
                    .hash(Base64.getEncoder().encodeToString(new SecureRandom().generateSeed(32)));

    /// Refuses a password that is too short or absurdly long. No other rules: length is what helps.
    static void requireAcceptable(String password) {
        if (password.codePointCount(0, password.length()) < SHORTEST) {
            throw new Refusal.Invalid(
                    "password",
                    "A password has at least %d letters; a short sentence is fine."
                            .formatted(SHORTEST));
        }
        if (password.length() > LONGEST) {
            throw new Refusal.Invalid(
                    "password", "A password has at most %d letters.".formatted(LONGEST));
        }
    }

    String hash(String password) {
        return printed.filter(password::equals).isPresent()
                ? hash(password, PRINTED_MEMORY_KIB, PRINTED_PASSES)
                : hash(password, MEMORY_KIB, PASSES);
    }

    private String hash(String password, int memoryKib, int passes) {
        byte[] salt = new byte[SALT_BYTES];
        random.nextBytes(salt);
        byte[] hash = argon2(password, salt, memoryKib, passes, LANES);
        return "$argon2id$v=19$m=%d,t=%d,p=%d$%s$%s"
                .formatted(memoryKib, passes, LANES, encode(salt), encode(hash));
    }

    boolean matches(String password, String stored) {
        String[] parts = stored.split("\\$", -1);
        String[] parameters = parts[3].split(",", -1);
        byte[] expected = Base64.getDecoder().decode(parts[5]);
        byte[] actual =
                argon2(
                        password,
                        Base64.getDecoder().decode(parts[4]),
                        number(parameters[0]),
                        number(parameters[1]),
                        number(parameters[2]));
        return MessageDigest.isEqual(expected, actual);
    }

    /// Checks against nobody's password: takes the time of a check and is false.
    boolean matchesNobody(String password) {
        return matches(password, DECOY);
    }

    private static int number(String parameter) {
        return Integer.parseInt(parameter.substring(2));
    }

    private static String encode(byte[] bytes) {
        return Base64.getEncoder().withoutPadding().encodeToString(bytes);
    }

    private static byte[] argon2(String password, byte[] salt, int memory, int passes, int lanes) {
        var parameters =
                new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                        .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                        .withMemoryAsKB(memory)
                        .withIterations(passes)
                        .withParallelism(lanes)
                        .withSalt(salt)
                        .build();
        var generator = new Argon2BytesGenerator();
        generator.init(parameters);
        byte[] hash = new byte[HASH_BYTES];
        String normal = Normalizer.normalize(password, Normalizer.Form.NFC);
        generator.generateBytes(normal.getBytes(StandardCharsets.UTF_8), hash);
        return hash;
    }
}
