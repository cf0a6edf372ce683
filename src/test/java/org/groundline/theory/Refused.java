package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/// What a refusal must say.
final class Refused {
    private Refused() {}

    static void assertRefused(ThrowingCallable call, String quantity, String rule) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(quantity)
                .hasMessageContaining(rule);
    }
}
