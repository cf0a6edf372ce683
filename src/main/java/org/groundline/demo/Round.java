package org.groundline.demo;

import org.groundline.record.Debriefs.Outcome;
import org.groundline.record.ModuleRecord;
import org.groundline.record.ModuleState;
import org.groundline.record.ShownDemonstration;
import org.groundline.record.TalkItem;
import org.groundline.school.Actor;

import java.util.List;

/// An instructor goes round: talks safety-critical answers through, watches demonstrations, signs
/// off what is complete. Not everybody's turn comes.
///
/// @param instructor e-mail address
/// @param talks share of the students with whom their answers are talked through
/// @param shows share of the missing demonstrations that are observed
/// @param signs share of the complete modules that are signed off
record Round(
        World world, String module, String instructor, double talks, double shows, double signs) {
    private static final double EXPLAINS_BACK = 0.88;
    private static final double TALK_CONVINCES = 0.85;
    private static final double NOTED = 0.35;

    /// Spends some minutes with a student.
    void visit(Student student) {
        Chance chance = student.chance().of("round " + world.daysBefore());
        Actor actor = world.as(instructor);
        ModuleRecord before = recordOf(actor, student);
        if (chance.happens(talks)) {
            before.toTalkThrough().forEach(item -> talk(actor, student, item, chance));
        }
        before.toShow().stream()
                .map(ShownDemonstration::demonstration)
                .filter(d -> chance.of(d.id()).happens(shows))
                .forEach(d -> observe(actor, student, d.id(), chance.of("note " + d.id())));
        boolean ready = recordOf(actor, student).state() instanceof ModuleState.Ready;
        if (ready && chance.happens(signs)) {
            world.doors()
                    .signOffs()
                    .signOff(actor, student.subject(), module, world.roster().password());
        }
    }

    private ModuleRecord recordOf(Actor actor, Student student) {
        return world.doors().records().getRecord(actor, student.subject()).getModule(module);
    }

    private void talk(Actor actor, Student student, TalkItem item, Chance visit) {
        Chance chance = visit.of(item.shown().stem());
        boolean understood = chance.happens(EXPLAINS_BACK);
        Roster.Talks notes = world.roster().talks();
        List<String> fitting = understood ? notes.explainedBack() : notes.notYetUnderstood();
        String note = !understood || chance.happens(NOTED) ? chance.oneOf(fitting) : "";
        world.doors()
                .debriefs()
                .enter(
                        actor,
                        student.subject(),
                        item.item(),
                        understood ? Outcome.EXPLAINED_BACK : Outcome.NOT_YET_UNDERSTOOD,
                        note);
        student.mind().hear(item.belief(), understood ? TALK_CONVINCES : 0, chance);
    }

    private void observe(Actor actor, Student student, String demonstration, Chance chance) {
        String note = chance.happens(NOTED) ? world.roster().observed() : "";
        world.doors().demonstrations().observe(actor, student.subject(), demonstration, note);
    }
}
