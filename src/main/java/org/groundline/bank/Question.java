package org.groundline.bank;

import java.util.Optional;

/// A checked question of the bank. It never changes: another content is another version.
public sealed interface Question permits FixedQuestion, NumericQuestion {
    Heading heading();

    /// What is asked, as its author wrote it; a template names its values in braces.
    String stem();

    /// The content as canonical JSON (RFC 8785), complete in itself: misconceptions and sources are
    /// written out. Review state, validity and statistics are not part of it.
    String canonical();

    /// The SHA-256 of [#canonical] in lower-case hexadecimal digits.
    String version();

    default String id() {
        return heading().id();
    }

    default String objective() {
        return heading().objective();
    }

    default String topic() {
        return heading().topic();
    }

    default String module() {
        return heading().module();
    }

    default Level level() {
        return heading().level();
    }

    /// Where it holds; empty where it holds in every country.
    Optional<Jurisdiction> jurisdiction();

    default boolean safetyCritical() {
        return heading().safetyCritical();
    }
}
