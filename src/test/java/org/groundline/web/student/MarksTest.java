package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.school.PolicyRules;
import org.junit.jupiter.api.Test;

class MarksTest {
    @Test
    void marksAreWrittenWithoutEmptyDecimals() {
        assertThat(new Marks(2_400, 3_000).gained()).isEqualTo("24");
        assertThat(new Marks(2_450, 3_000).gained()).isEqualTo("24.5");
        assertThat(new Marks(2_400, 3_000).all()).isEqualTo("30");
    }

    @Test
    void theirShareHasTheDecimalsOfThePassMark() {
        var marks = new Marks(7_540, 10_000);

        assertThat(marks.share(PolicyRules.DEFAULT)).isEqualTo("75\u202F%");
        assertThat(marks.share(new PolicyRules(7_533, 10, 15, 5))).isEqualTo("75.40\u202F%");
    }

    @Test
    void marksOfNothingAreRefused() {
        assertThatThrownBy(() -> new Marks(0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
