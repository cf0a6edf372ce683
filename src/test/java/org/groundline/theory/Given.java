package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.groundline.measure.Units;

/// The inputs of a row of check values; a name ends in its unit.
record Given(JsonNode inputs) {
    double get(String name) {
        assertThat(inputs.has(name)).as("input " + name).isTrue();
        return inputs.get(name).asDouble();
    }

    String text(String name) {
        assertThat(inputs.has(name)).as("input " + name).isTrue();
        return inputs.get(name).asText();
    }

    double si(String name, String unit) {
        return Units.get(unit).toSi(get(name));
    }

    double bank() {
        return si("bank_deg", "°");
    }

    double airspeed() {
        return si("v_kmh", "km/h");
    }

    double groundSpeed() {
        return Glide.groundSpeed(airspeed(), si("headwind_kmh", "km/h"));
    }
}
