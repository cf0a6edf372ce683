package org.groundline.web.student;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/// The question of the small bank on glide distance in wind, as a student reads it off the page and
/// works it out by hand.
record GlideQuestion(
        BigDecimal airspeed, BigDecimal glideRatio, BigDecimal wind, BigDecimal height) {
    private static final Pattern STEM =
            Pattern.compile(
                    "straight at ([\\d.]+)\\s*km/h, where your wing glides ([\\d.]+) to 1 in still air, into a\\s+headwind of"
                            + " ([\\d.]+)\\s*km/h. You are ([\\d.]+)\\s*m above",
                    Pattern.UNICODE_CHARACTER_CLASS);

    static GlideQuestion in(String html) {
        var stem = STEM.matcher(html);
        if (!stem.find()) {
            throw new AssertionError("no such question in " + html);
        }
        return new GlideQuestion(
                new BigDecimal(stem.group(1)),
                new BigDecimal(stem.group(2)),
                new BigDecimal(stem.group(3)),
                new BigDecimal(stem.group(4)));
    }

    /// Metres to the whole 50 m below, as the template rounds.
    int distance() {
        var step = BigDecimal.valueOf(50);
        return stillAir()
                .multiply(airspeed.subtract(wind))
                .divide(airspeed.multiply(step), 0, RoundingMode.FLOOR)
                .multiply(step)
                .intValueExact();
    }

    /// What comes out where the wind is left out.
    BigDecimal stillAir() {
        return height.multiply(glideRatio);
    }
}
