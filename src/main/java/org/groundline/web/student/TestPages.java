package org.groundline.web.student;

import io.javalin.http.Context;

import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.PolicyRules;
import org.groundline.sitting.Blueprint;
import org.groundline.sitting.Opening;
import org.groundline.web.Doors;
import org.groundline.web.request.Errors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Percent;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;
import org.groundline.web.student.RulesPage.Fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/// A test before it is begun.
final class TestPages {
    private final Doors doors;

    TestPages(Doors doors) {
        this.doors = doors;
    }

    void addTo(Routes routes) {
        routes.get("/{school}/tests/{opening}", Action.SIT, (ctx, actor) -> rules(ctx, actor, ""));
        routes.post("/{school}/tests/{opening}/begin", Action.SIT, this::begin);
    }

    private void begin(Context ctx, Actor actor) {
        Form.of(ctx);
        try {
            UUID sitting = doors.sittings().begin(actor, Form.pathId(ctx, "opening"));
            ctx.redirect("/" + actor.school().code() + "/sittings/" + sitting);
        } catch (Refusal.Conflict e) {
            ctx.status(Errors.statusOf(e));
            rules(ctx, actor, Errors.messageOf(e));
        }
    }

    private void rules(Context ctx, Actor actor, String message) {
        Opening opening = getOpening(actor, Form.pathId(ctx, "opening"));
        RulesWords words = RulesWords.in(actor.school().language());
        boolean running =
                doors.sittings().listOpen(actor).stream()
                        .anyMatch(
                                s -> s.facts().opening().filter(opening.id()::equals).isPresent());
        var page =
                new RulesPage(
                        Frame.of(ctx, actor, opening.blueprint().name()),
                        words,
                        opening.id(),
                        facts(actor, opening, words),
                        words.sentences(),
                        running ? words.goOn() : words.begin(),
                        running ? "" : closed(actor, opening, words),
                        message);
        ctx.render("student/rules.jte", Map.of("page", page));
    }

    private Opening getOpening(Actor actor, UUID id) {
        return doors.openings().listMine(actor).stream()
                .filter(o -> o.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal.NotFound("No such test is open for your intake."));
    }

    private String closed(Actor actor, Opening opening, RulesWords words) {
        Times times = Times.of(actor.school());
        return opening.isOpenAt(doors.foundation().now())
                ? ""
                : words.notOpen(
                        times.dayAndTime(opening.opensAt()), times.dayAndTime(opening.closesAt()));
    }

    private List<Fact> facts(Actor actor, Opening opening, RulesWords words) {
        PolicyRules rules = doors.policies().current(actor.school()).rules();
        Blueprint blueprint = opening.blueprint();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(words.questions(), String.valueOf(blueprint.items())));
        facts.add(new Fact(words.time(), words.minutes(blueprint.minutes())));
        facts.add(new Fact(words.passMark(), words.ofTheMarks(Percent.mark(rules.passMark()))));
        facts.add(new Fact(words.aids(), words.aidsAllowed()));
        if (!opening.place().isEmpty()) {
            facts.add(new Fact(words.place(), opening.place()));
        }
        String closes = Times.of(actor.school()).dayAndTime(opening.closesAt());
        facts.add(new Fact(words.beginBy(), closes));
        return facts;
    }
}
