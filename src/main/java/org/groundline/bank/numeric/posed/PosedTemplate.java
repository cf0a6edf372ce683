package org.groundline.bank.numeric.posed;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A template as posed: with a number to be typed, or with options.
public sealed interface PosedTemplate permits PosedNumber, PosedChoice {
    /// The drawn values as printed, by name.
    Map<String, String> drawn();

    String stem();

    /// The worked solution with the drawn values.
    List<String> steps();

    String explanation();

    Optional<PosedPicture> picture();
}
