package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.bank.Module;
import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.sitting.Opening;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/// Tests that were opened, and opening one.
public final class TestPages {
    private static final int LONGEST_HOURS = 14 * 24;

    private final Doors doors;

    TestPages(Doors doors) {
        this.doors = doors;
    }

    /// @param typed what was typed into a form that was refused, by field
    public record TestsPage(
            Frame frame,
            StaffWords words,
            List<Module> modules,
            List<Intake> intakes,
            List<Row> openings,
            boolean mayOpen,
            Map<String, String> typed,
            String message) {
        /// One opened test.
        public record Row(
                String name,
                String intake,
                String from,
                String until,
                boolean open,
                String by,
                String place) {}

        public String typed(String field) {
            return typed.getOrDefault(field, "");
        }
    }

    void addTo(Routes routes) {
        routes.get(
                "/{school}/tests",
                Action.READ_OPENING,
                (ctx, actor) -> show(ctx, actor, Map.of(), ""));
        routes.post("/{school}/tests", Action.OPEN_TEST, this::open);
    }

    private void show(Context ctx, Actor actor, Map<String, String> typed, String message) {
        StaffWords words = StaffWords.in(actor.school().language());
        List<Intake> intakes = doors.people().listIntakes(actor.school());
        Map<UUID, String> names = doors.people().namesIn(actor.school());
        var page =
                new TestsPage(
                        Frame.of(ctx, actor, words.tests()),
                        words,
                        doors.bank().course().modules(),
                        intakes,
                        doors.openings().listOpenings(actor).stream()
                                .map(opening -> row(opening, intakes, names, actor, words))
                                .toList(),
                        actor.may(Action.OPEN_TEST),
                        typed,
                        message);
        ctx.render("staff/tests.jte", Map.of("page", page));
    }

    private TestsPage.Row row(
            Opening opening,
            List<Intake> intakes,
            Map<UUID, String> names,
            Actor actor,
            StaffWords words) {
        var dates = new Dates(actor.school());
        String intake =
                intakes.stream()
                        .filter(i -> i.id().equals(opening.intake()))
                        .map(Intake::name)
                        .findFirst()
                        .orElse(words.erased());
        return new TestsPage.Row(
                opening.blueprint().name(),
                intake,
                dates.dayAndTime(opening.opensAt()),
                dates.dayAndTime(opening.closesAt()),
                opening.isOpenAt(doors.foundation().now()),
                names.getOrDefault(opening.openedBy().value(), words.erased()),
                opening.place());
    }

    private void open(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "module", "intake", "hours", "place");
        try {
            var window = Duration.ofHours(form.number("hours", 1, LONGEST_HOURS));
            doors.openings()
                    .open(
                            actor,
                            new NewOpening(
                                    form.text("module"),
                                    form.id("intake"),
                                    window,
                                    form.text("place")));
            ctx.redirect("/" + actor.school().code() + "/tests");
        } catch (Refusal.Invalid | Refusal.Conflict e) {
            ctx.status(e instanceof Refusal.Conflict ? 409 : 400);
            show(ctx, actor, typed(form), String.valueOf(e.getMessage()));
        }
    }

    private static Map<String, String> typed(Form form) {
        return Map.of(
                "module", form.text("module"),
                "intake", form.text("intake"),
                "hours", form.text("hours"),
                "place", form.text("place"));
    }
}
