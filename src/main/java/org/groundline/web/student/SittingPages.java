package org.groundline.web.student;

import io.javalin.http.Context;

import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.sitting.Item;
import org.groundline.sitting.KeptAnswer;
import org.groundline.sitting.OpenSitting;
import org.groundline.sitting.Receipt;
import org.groundline.sitting.Sitting;
import org.groundline.web.Doors;
import org.groundline.web.request.Errors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// Sitting a test: its items, the list of all before handing in, handing in.
///
/// A form saves its answer and moves on; a script may save the same form on the way, with `Accept:
/// application/json`, and is told what was saved.
final class SittingPages {
    private final Doors doors;
    private final SittingViews views;

    SittingPages(Doors doors) {
        this.doors = doors;
        this.views = new SittingViews(doors);
    }

    /// What a script is told of an answer that was saved.
    ///
    /// @param saved when, by the school's clock
    /// @param echo what the program read
    record Saved(String saved, String echo) {}

    void addTo(Routes routes) {
        routes.get("/{school}/sittings/{sitting}", Action.SIT, this::show);
        routes.post("/{school}/sittings/{sitting}/answers", Action.SIT, this::answer);
        routes.get("/{school}/sittings/{sitting}/review", Action.SIT, this::review);
        routes.post("/{school}/sittings/{sitting}/hand-in", Action.SIT, this::handIn);
    }

    private void show(Context ctx, Actor actor) {
        Optional<OpenSitting> open = findOpen(ctx, actor);
        if (open.isEmpty()) {
            toResult(ctx);
            return;
        }
        views.item(ctx, actor, open.get(), asked(ctx, open.get()), Optional.empty());
    }

    /// The item that the query names; without one the first that is still open.
    private static Item asked(Context ctx, OpenSitting open) {
        String asked = ctx.queryParam("item");
        if (asked == null) {
            return open.unanswered().stream().findFirst().orElse(open.items().get(0));
        }
        return open.items().stream()
                .filter(i -> String.valueOf(i.position()).equals(asked))
                .findFirst()
                .orElseThrow(() -> new Refusal.NotFound("This test has no such question."));
    }

    private void answer(Context ctx, Actor actor) {
        Instant arrived = doors.foundation().now();
        AnswerForm form = AnswerForm.of(ctx);
        if (Errors.wantsJson(ctx)) {
            ctx.json(save(actor, sittingId(ctx), form, arrived));
            return;
        }
        Optional<OpenSitting> open = findOpen(ctx, actor);
        if (open.isEmpty()) {
            toResult(ctx);
            return;
        }
        answer(ctx, actor, open.get(), form, arrived);
    }

    private Saved save(Actor actor, UUID sitting, AnswerForm form, Instant arrived) {
        Receipt receipt = doors.sittings().answer(actor, sitting, form.given(arrived));
        String time = Times.of(actor.school()).time(receipt.receivedAt());
        return new Saved(time, receipt.echo());
    }

    private void answer(
            Context ctx, Actor actor, OpenSitting open, AnswerForm form, Instant arrived) {
        Item item =
                open.items().stream()
                        .filter(i -> i.id().equals(form.item()))
                        .findFirst()
                        .orElseThrow(() -> new Refusal.NotFound("This test has no such question."));
        form.flag().ifPresent(f -> doors.sittings().flag(actor, sittingId(ctx), item.id(), f));
        try {
            boolean saved = saveIfNew(actor, open, form, arrived);
            boolean unclear = !Answered.findWays(actor.school(), item, form.answer()).isEmpty();
            move(ctx, open, item, saved && unclear ? AnswerForm.Go.STAY : form.go());
        } catch (Refusal.Invalid | Refusal.Conflict | Refusal.Mismatch | Refusal.Busy e) {
            ctx.status(Errors.statusOf(e));
            OpenSitting now = doors.sittings().open(actor, sittingId(ctx));
            var refused = new SittingViews.Refused(form.answer(), Errors.messageOf(e));
            views.item(ctx, actor, now, item, Optional.of(refused));
        }
    }

    /// Saves an answer unless it is what this seat saved before, or there is none; says whether it
    /// did. Who moves on from one that could be two numbers first sees how it was read.
    private boolean saveIfNew(Actor actor, OpenSitting open, AnswerForm form, Instant arrived) {
        Optional<KeptAnswer> kept = Optional.ofNullable(open.answers().get(form.item()));
        if (form.answer().isBlank()) {
            kept.ifPresent(k -> refuseToTakeAway(actor, k));
            return false;
        }
        boolean known =
                kept.filter(k -> k.seat() == form.seat() && k.raw().equals(form.answer()))
                        .isPresent();
        if (!known) {
            save(actor, open.sitting().facts().id(), form, arrived);
        }
        return !known;
    }

    private static void refuseToTakeAway(Actor actor, KeptAnswer kept) {
        SittingWords words = SittingWords.in(actor.school().language());
        throw new Refusal.Invalid("answer", words.stays(kept.raw()));
    }

    private static void move(Context ctx, OpenSitting open, Item item, AnswerForm.Go go) {
        int position =
                switch (go) {
                    case STAY -> item.position();
                    case BACK -> Math.max(1, item.position() - 1);
                    case NEXT -> item.position() + 1;
                    case REVIEW -> open.items().size() + 1;
                };
        String root = root(ctx);
        ctx.redirect(
                position > open.items().size() ? root + "/review" : root + "?item=" + position);
    }

    private void review(Context ctx, Actor actor) {
        Optional<OpenSitting> open = findOpen(ctx, actor);
        if (open.isEmpty()) {
            toResult(ctx);
            return;
        }
        views.review(ctx, actor, open.get(), false);
    }

    private void handIn(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "sure");
        Optional<OpenSitting> open = findOpen(ctx, actor);
        if (open.isPresent() && !form.text("sure").equals("yes")) {
            ctx.status(400);
            views.review(ctx, actor, open.get(), true);
            return;
        }
        doors.sittings().handIn(actor, sittingId(ctx));
        toResult(ctx);
    }

    /// Opens the sitting on this device; empty where it is handed in or set aside.
    private Optional<OpenSitting> findOpen(Context ctx, Actor actor) {
        UUID id = sittingId(ctx);
        return switch (doors.sittings().getSitting(actor, id)) {
            case Sitting.Open open -> Optional.of(doors.sittings().open(actor, id));
            case Sitting.HandedIn handedIn -> Optional.empty();
            case Sitting.Annulled annulled -> Optional.empty();
        };
    }

    private static UUID sittingId(Context ctx) {
        return Form.pathId(ctx, "sitting");
    }

    private static void toResult(Context ctx) {
        ctx.redirect(root(ctx) + "/result");
    }

    private static String root(Context ctx) {
        return "/%s/sittings/%s".formatted(ctx.pathParam("school"), sittingId(ctx));
    }
}
