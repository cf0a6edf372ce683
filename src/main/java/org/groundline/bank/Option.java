package org.groundline.bank;

import java.util.Optional;

/// One answer to choose: the key, or a distractor with the wrong idea behind it.
public sealed interface Option {
    String text();

    default Optional<Misconception> misconception() {
        return switch (this) {
            case Right right -> Optional.empty();
            case Wrong wrong -> Optional.of(wrong.idea());
        };
    }

    record Right(String text) implements Option {}

    record Wrong(String text, Misconception idea) implements Option {}
}
