package org.groundline.bank.numeric.posed;

/// An option as posed: the right one, or one with the wrong idea that leads to it.
public sealed interface PosedOption {
    String text();

    record Right(String text) implements PosedOption {}

    record Wrong(String text, Cause.Idea cause) implements PosedOption {}
}
