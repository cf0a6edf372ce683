package org.groundline.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PermissionsTest {
    @Test
    void theShippedFileNamesEveryActionForEveryRole() {
        for (Action action : Action.values()) {
            for (Role role : Role.values()) {
                assertThat(Permissions.SHIPPED.scope(action, role)).isNotNull();
            }
        }
    }

    @Test
    void aStudentReachesNoRecordButTheirOwn() {
        for (Action action : Action.values()) {
            assertThat(Permissions.SHIPPED.scope(action, Role.STUDENT))
                    .as(action.word())
                    .isNotEqualTo(Scope.SCHOOL);
        }
    }

    @Test
    void whoOnlyLooksChangesNothing() {
        for (Action action : Action.values()) {
            boolean changes = !action.word().endsWith(".read") && action != Action.USE_ACCOUNT;
            if (changes) {
                assertThat(Permissions.SHIPPED.scope(action, Role.INSPECTOR))
                        .as(action.word())
                        .isEqualTo(Scope.NONE);
            }
        }
    }

    @Test
    void aFileThatLeavesSomethingOutIsRefused() {
        assertThatThrownBy(() -> Permissions.parse("action, student\ncourse.read, own\n"))
                .hasMessageContaining("one cell a role for course.read");
        assertThatThrownBy(() -> Permissions.parse("action, pilot\n"))
                .hasMessageContaining("no role pilot");
    }
}
