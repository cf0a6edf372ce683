package org.groundline.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DimensionTest {
    @Test
    void aRootUndoesAPower() {
        assertThat(Dimension.SPEED.power(2).root(2)).isEqualTo(Dimension.SPEED);
        assertThat(Dimension.SPEED.root(2).times(Dimension.SPEED.root(2)))
                .isEqualTo(Dimension.SPEED);
    }

    @Test
    void theOrderOfFactorsDoesNotMatter() {
        assertThat(Dimension.DENSITY.times(Dimension.AREA))
                .isEqualTo(Dimension.AREA.times(Dimension.DENSITY))
                .hasSameHashCodeAs(Dimension.AREA.times(Dimension.DENSITY));
    }

    @Test
    void whatCancelsIsAPlainNumber() {
        assertThat(Dimension.SPEED.over(Dimension.SPEED)).isEqualTo(Dimension.NUMBER);
    }

    @Test
    void anAngleIsNoPlainNumber() {
        assertThat(Dimension.ANGLE).isNotEqualTo(Dimension.NUMBER);
    }

    @Test
    void aDimensionWithoutANameIsToldByItsUnits() {
        assertThat(Dimension.SPEED).hasToString("a speed (m/s)");
        assertThat(Dimension.LENGTH.times(Dimension.SPEED).toString())
                .startsWith("something in ")
                .contains("m²")
                .contains("s");
    }
}
