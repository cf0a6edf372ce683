package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.bank.Module;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.sitting.Opening;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;
import org.groundline.web.staff.words.SharedWords;
import org.groundline.web.staff.words.TestWords;

import java.time.Duration;
import java.util.HashMap;
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

    public record TestsPage(
            Frame frame,
            TestWords words,
            SharedWords shared,
            List<Module> modules,
            List<Intake> intakes,
            List<Row> openings,
            boolean mayOpen,
            Returned form) {
        /// One opened test.
        ///
        /// @param window from when until when it can be begun
        public record Row(
                String name,
                StateWords state,
                String intake,
                String window,
                String place,
                String by) {}
    }

    void addTo(Routes routes) {
        routes.get(
                "/{school}/tests",
                Action.READ_OPENING,
                (ctx, actor) -> show(ctx, actor, Returned.NOTHING));
        routes.post("/{school}/tests", Action.OPEN_TEST, this::open);
    }

    private void show(Context ctx, Actor actor, Returned form) {
        String language = actor.school().language();
        TestWords words = TestWords.in(language);
        SharedWords shared = SharedWords.in(language);
        List<Intake> intakes = doors.people().listIntakes(actor.school());
        Map<UUID, String> names = new HashMap<>(doors.people().namesIn(actor.school()));
        intakes.forEach(intake -> names.put(intake.id(), intake.name()));
        var page =
                new TestsPage(
                        Frame.of(ctx, actor, words.tests()),
                        words,
                        shared,
                        doors.bank().course().modules(),
                        intakes,
                        doors.openings().listOpenings(actor).stream()
                                .map(opening -> row(opening, names, actor))
                                .toList(),
                        actor.may(Action.OPEN_TEST),
                        form);
        ctx.render("staff/tests.jte", Map.of("page", page));
    }

    /// @param names of people and intakes
    private TestsPage.Row row(Opening opening, Map<UUID, String> names, Actor actor) {
        String language = actor.school().language();
        TestWords words = TestWords.in(language);
        String erased = SharedWords.in(language).erased();
        return new TestsPage.Row(
                opening.blueprint().name(),
                opening.isOpenAt(doors.foundation().now())
                        ? new StateWords("begun", "", words.openNow())
                        : new StateWords("untouched", "", words.closed()),
                names.getOrDefault(opening.intake(), erased),
                Times.of(actor.school()).span(opening.opensAt(), opening.closesAt()),
                opening.place(),
                names.getOrDefault(opening.openedBy().value(), erased));
    }

    private void open(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "module", "intake", "hours", "place");
        Returned.change(
                ctx,
                "/" + actor.school().code() + "/tests",
                form.typed(),
                () -> doors.openings().open(actor, wish(form)),
                returned -> show(ctx, actor, returned));
    }

    private static NewOpening wish(Form form) {
        return new NewOpening(
                form.text("module"),
                form.id("intake"),
                Duration.ofHours(form.number("hours", 1, LONGEST_HOURS)),
                form.text("place"));
    }
}
