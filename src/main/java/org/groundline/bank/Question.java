package org.groundline.bank;

/// A checked question of the bank. It never changes: another content is another version.
public sealed interface Question permits FixedQuestion, NumericQuestion {
    Heading heading();

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

    /// Whether it holds in every country: air law that does not belongs to a pack of one
    /// jurisdiction.
    default boolean holdsEverywhere() {
        return switch (this) {
            case FixedQuestion fixed -> fixed.jurisdiction().isEmpty();
            case NumericQuestion numeric -> true;
        };
    }

    default boolean safetyCritical() {
        return heading().safetyCritical();
    }
}
