package org.groundline.diagram;

/// What a drawing is for.
public enum Purpose {
    /// It stands beside the stem: what is asked is a question mark, and nothing shows its size.
    STEM,

    /// It explains the answer: everything to scale, what was asked with its number.
    SOLUTION
}
