package org.groundline.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.school.People.NewAuthorisation;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// People, intakes and authorisations through their door, on a real PostgreSQL.
class PeopleTest {
    private static final TestServer SERVER = TestServer.start();
    private static final People PEOPLE = SERVER.doors().people();
    private final School school = givenSchool();
    private final SubjectId ada = SERVER.givenPerson(school, "ada", Role.STUDENT);
    private final Intake spring = SERVER.givenIntake(school, "Spring");

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static School givenSchool() {
        return SERVER.givenSchool("s" + UUID.randomUUID().toString().substring(0, 8));
    }

    private void join(UUID intake, SubjectId subject) {
        PEOPLE.join(school, Optional.empty(), intake, subject);
    }

    @Test
    void joiningTwiceIsJoiningOnce() {
        join(spring.id(), ada);
        join(spring.id(), ada);

        assertThat(PEOPLE.listIntakesOf(school, ada)).containsExactly(spring);
    }

    @Test
    void anIntakeThatTheSchoolDoesNotHaveCannotBeJoined() {
        Intake elsewhere = SERVER.givenIntake(givenSchool(), "Spring");

        for (UUID intake : List.of(UUID.randomUUID(), elsewhere.id())) {
            assertThatThrownBy(() -> join(intake, ada))
                    .isInstanceOf(Refusal.NotFound.class)
                    .hasMessage("The school has no such intake.");
        }
        assertThat(PEOPLE.listIntakesOf(school, ada)).isEmpty();
    }

    @Test
    void somebodyTheSchoolDoesNotKnowJoinsNoIntake() {
        SubjectId elsewhere = SERVER.givenPerson(givenSchool(), "ada", Role.STUDENT);

        for (SubjectId subject : List.of(new SubjectId(UUID.randomUUID()), elsewhere)) {
            assertThatThrownBy(() -> join(spring.id(), subject))
                    .isInstanceOf(Refusal.NotFound.class)
                    .hasMessage("There is no such person in this school.");
        }
        assertThat(PEOPLE.listStudents(school, Optional.of(spring.id()))).isEmpty();
    }

    @Test
    void somebodyTheSchoolDoesNotKnowGetsNoAuthorisation() {
        LocalDate today = school.dayOf(SERVER.now());
        var wish =
                new NewAuthorisation(
                        "T-1", List.of("foot"), "Test office", today, today.plusYears(1));
        var nobody = new SubjectId(UUID.randomUUID());

        assertThatThrownBy(() -> PEOPLE.authorise(school, Optional.empty(), nobody, wish))
                .isInstanceOf(Refusal.NotFound.class)
                .hasMessage("There is no such person in this school.");
    }
}
