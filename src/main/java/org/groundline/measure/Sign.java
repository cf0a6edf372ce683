package org.groundline.measure;

/// Whether a typed minus means something.
public enum Sign {
    COUNTS,

    /// The quantity is positive by convention, as a sink rate is: −1.2 is read as 1.2.
    NONE
}
