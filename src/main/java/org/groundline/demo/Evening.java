package org.groundline.demo;

import org.groundline.bank.Brief;
import org.groundline.bank.Key;
import org.groundline.bank.Question;
import org.groundline.school.Actor;
import org.groundline.sitting.GivenAnswer;
import org.groundline.sitting.Practices.Explained;
import org.groundline.sitting.Practices.PracticeItem;

import java.util.Optional;

/// One student reads about and practises one topic for an evening, and learns a little from what is
/// explained.
final class Evening {
    private static final double EXPLANATION_CONVINCES = 0.25;
    private static final double READS_BEFORE = 0.6;

    private final World world;
    private final Student student;
    private final String topic;
    private final Chance chance;

    private Evening(World world, Student student, String topic) {
        this.world = world;
        this.student = student;
        this.topic = topic;
        this.chance = student.chance().of("practice " + world.daysBefore());
    }

    /// Answers the first item now, and enters the others into the agenda.
    static void begin(World world, Student student, String topic) {
        var evening = new Evening(world, student, topic);
        evening.readBrief();
        evening.answerOne(evening.chance.between(5, 9));
    }

    /// Many read before they practise, and not all of them.
    private void readBrief() {
        Optional<Brief> brief = world.bank().findBrief(topic);
        if (brief.isPresent() && chance.of("brief").happens(READS_BEFORE)) {
            Actor actor = world.as(student.email());
            world.doors().readings().acknowledge(actor, topic, brief.get().version());
        }
    }

    private void answerOne(int left) {
        Actor actor = world.as(student.email());
        world.doors().seeds().forget();
        PracticeItem next = world.doors().practices().next(actor, topic);
        Question question = world.bank().question(next.item().questionId());
        Key key = world.doors().seeds().keyOf(world.bank(), next.item());
        Chance own = chance.of("answer " + left);
        Explained explained =
                world.doors()
                        .practices()
                        .answer(
                                actor,
                                next.sitting(),
                                given(next, student.mind().answer(question, key, own)));
        explained
                .mark()
                .belief()
                .ifPresent(b -> student.mind().hear(b.id(), EXPLANATION_CONVINCES, own));
        if (left > 1) {
            world.agenda()
                    .enter(
                            world.now().plusSeconds(chance.between(40, 130)),
                            () -> answerOne(left - 1));
        }
    }

    private GivenAnswer given(PracticeItem next, String raw) {
        return new GivenAnswer(
                world.doors().foundation().ids().random(),
                next.item().id(),
                next.seat(),
                next.item().position(),
                Optional.of(world.now()),
                world.now(),
                raw);
    }
}
