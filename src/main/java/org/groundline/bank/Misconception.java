package org.groundline.bank;

/// A named wrong idea.
///
/// @param wrong the idea, in a sentence
/// @param right what is right instead, in a sentence
/// @param feedback a short clause that reads after "wrong: "
public record Misconception(String id, String wrong, String right, String feedback) {}
