package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.school.PolicyRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarksTest {
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
                    # gained, possible, shown
                    2400,     3000,     80
                    2200,     3000,     73
                    7499,     10000,    74
                    7500,     10000,    75
                    0,        3000,     0
                    3000,     3000,     100
                    """)
    void aShareIsCutOffToAWholeNumber(int gained, int possible, String shown) {
        assertThat(new Marks(gained, possible).share(PolicyRules.DEFAULT))
                .isEqualTo(shown + "\u202F%");
    }

    @Test
    void aFailNeverReadsAsThePassMark() {
        PolicyRules whole = PolicyRules.DEFAULT;
        var broken = new PolicyRules(7_533, 10, 15, 5);
        for (int possible = 1; possible <= 60; possible++) {
            for (int gained = 0; gained <= possible; gained++) {
                for (PolicyRules rules : new PolicyRules[] {whole, broken}) {
                    var marks = new Marks(100 * gained, 100 * possible);
                    boolean reads = percent(marks.share(rules)) >= percent(Marks.passMark(rules));
                    assertThat(reads).isEqualTo(rules.passes(100 * gained, 100 * possible));
                }
            }
        }
    }

    private static double percent(String shown) {
        return Double.parseDouble(shown.replace("\u202F%", ""));
    }

    @Test
    void marksOfNothingAreRefused() {
        assertThatThrownBy(() -> new Marks(0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
