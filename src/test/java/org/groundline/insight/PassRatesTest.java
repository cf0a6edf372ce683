package org.groundline.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.insight.PassRates.Rates;
import org.groundline.psychometrics.Proportion;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;

/// Pass rates by topic, over sittings made for the purpose.
class PassRatesTest {
    private static final TestServer SERVER = TestServer.start();
    private final School school =
            SERVER.givenSchool("s" + UUID.randomUUID().toString().substring(0, 8));
    private Actor ina;

    @BeforeEach
    void givenInstructor() {
        SERVER.givenPerson(school, "ina", Role.INSTRUCTOR);
        ina = SERVER.actor(school, "ina");
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private Intake givenStudents(String name, int count) {
        SubjectId[] students =
                IntStream.range(0, count)
                        .mapToObj(i -> SERVER.givenPerson(school, name + i, Role.STUDENT))
                        .toArray(SubjectId[]::new);
        return SERVER.givenIntake(school, name, students);
    }

    private UUID opened(Intake intake) {
        return SERVER.doors()
                .openings()
                .open(ina, new NewOpening("AER", intake.id(), Duration.ofHours(2), ""))
                .id();
    }

    /// Sits the test; in each topic all items but the first few are right.
    private void sit(String student, UUID opening, int missesATopic) {
        var missed = new HashMap<String, Integer>();
        SERVER.givenSitting(
                school,
                student,
                opening,
                item ->
                        missed.merge(item.topic(), 1, Integer::sum) > missesATopic
                                ? Optional.of(SERVER.rightAnswer(school, item.id()))
                                : Optional.empty());
    }

    private TopicRate rate(Optional<UUID> intake, String topic) {
        Rates rates = SERVER.doors().rates().byTopic(ina, intake);
        return rates.topics().stream()
                .filter(t -> t.topic().id().equals(topic))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void belowFiveStudentsNothingIsSaid() {
        Intake spring = givenStudents("spring", 4);
        UUID opening = opened(spring);
        IntStream.range(0, 4).forEach(i -> sit("spring" + i, opening, 0));

        assertThat(rate(Optional.empty(), "AER-1"))
                .isInstanceOfSatisfying(
                        TopicRate.Silent.class,
                        silent -> assertThat(silent.students()).isEqualTo(4));
    }

    @Test
    void theRateIsTheShareOfStudentsWhoReachedTheMarkInTheTopic() {
        Intake spring = givenStudents("spring", 6);
        UUID opening = opened(spring);
        for (int i = 0; i < 6; i++) {
            sit("spring" + i, opening, i < 4 ? 2 : 3); // 8 of 10 reach 75 %, 7 of 10 do not
        }

        for (String topic : List.of("AER-1", "AER-2", "AER-3")) {
            assertThat(rate(Optional.of(spring.id()), topic))
                    .isInstanceOfSatisfying(
                            TopicRate.Reached.class,
                            reached -> {
                                assertThat(reached.students()).isEqualTo(6);
                                assertThat(reached.reached()).isEqualTo(4);
                                assertThat(reached.interval()).isEqualTo(Proportion.wilson(4, 6));
                            });
        }
        assertThat(rate(Optional.empty(), "EQU-1")).isInstanceOf(TopicRate.Silent.class);
    }

    @Test
    void onlyTheFirstCountedSittingOfAStudentCounts() {
        Intake spring = givenStudents("spring", 5);
        UUID first = opened(spring);
        IntStream.range(0, 5).forEach(i -> sit("spring" + i, first, 5));
        SERVER.passes(Duration.ofHours(1));
        UUID second = opened(spring);
        IntStream.range(0, 5).forEach(i -> sit("spring" + i, second, 0));

        assertThat(rate(Optional.empty(), "AER-2"))
                .isInstanceOfSatisfying(
                        TopicRate.Reached.class,
                        reached -> {
                            assertThat(reached.students()).isEqualTo(5);
                            assertThat(reached.reached()).isZero();
                        });
    }

    @Test
    void anIntakesRateLeavesTheOthersOut() {
        Intake spring = givenStudents("spring", 5);
        Intake autumn = givenStudents("autumn", 5);
        UUID one = opened(spring);
        UUID two = opened(autumn);
        IntStream.range(0, 5).forEach(i -> sit("spring" + i, one, 0));
        IntStream.range(0, 5).forEach(i -> sit("autumn" + i, two, 9));

        assertThat(rate(Optional.of(spring.id()), "AER-3"))
                .isInstanceOfSatisfying(
                        TopicRate.Reached.class, r -> assertThat(r.reached()).isEqualTo(5));
        assertThat(rate(Optional.of(autumn.id()), "AER-3"))
                .isInstanceOfSatisfying(
                        TopicRate.Reached.class, r -> assertThat(r.reached()).isZero());
        assertThat(rate(Optional.empty(), "AER-3"))
                .isInstanceOfSatisfying(
                        TopicRate.Reached.class, r -> assertThat(r.students()).isEqualTo(10));
    }

    @Test
    void aStudentMayNotSeeThem() {
        givenStudents("spring", 1);
        assertThatThrownBy(
                        () ->
                                SERVER.doors()
                                        .rates()
                                        .byTopic(SERVER.actor(school, "spring0"), Optional.empty()))
                .isInstanceOf(Refusal.Forbidden.class);
    }
}
