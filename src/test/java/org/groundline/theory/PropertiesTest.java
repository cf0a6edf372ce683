package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PropertiesTest {
    @Test
    void theStandardAirGetsColderAndThinnerWithAltitude() {
        for (double altitude = 0; altitude <= 10_900; altitude += 100) {
            assertThat(StandardAtmosphere.temperature(altitude + 100))
                    .isLessThan(StandardAtmosphere.temperature(altitude));
            assertThat(StandardAtmosphere.density(altitude + 100))
                    .isLessThan(StandardAtmosphere.density(altitude));
        }
    }

    @Test
    void theStandardAirCarriesItsOwnWeight() {
        // Hydrostatics, dp = −ρ g dH, by a difference over two metres.
        for (double altitude = 1; altitude < 11_000; altitude += 500) {
            double slope =
                    StandardAtmosphere.pressure(altitude + 1)
                            - StandardAtmosphere.pressure(altitude - 1);
            double weight = 2 * StandardAtmosphere.density(altitude) * StandardAtmosphere.GRAVITY;
            assertThat(-slope).isCloseTo(weight, within(weight * 1e-6));
        }
    }

    @Test
    void atSeaLevelTrueAndIndicatedAirspeedAreTheSame() {
        assertThat(StandardAtmosphere.trueAirspeed(10, 0)).isCloseTo(10, within(1e-6));
    }
}
