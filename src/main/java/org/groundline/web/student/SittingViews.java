package org.groundline.web.student;

import io.javalin.http.Context;

import org.groundline.school.Actor;
import org.groundline.sitting.Item;
import org.groundline.sitting.KeptAnswer;
import org.groundline.sitting.OpenSitting;
import org.groundline.web.Doors;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Times;
import org.groundline.web.student.AskedItem.Given;
import org.groundline.web.student.ReviewPage.NumberCell;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Puts the pages of an open sitting together.
final class SittingViews {
    private final Doors doors;

    SittingViews(Doors doors) {
        this.doors = doors;
    }

    /// An answer that was refused just now: what was typed, and why.
    record Refused(String answer, String why) {}

    void item(Context ctx, Actor actor, OpenSitting open, Item item, Optional<Refused> refused) {
        SittingWords words = SittingWords.in(actor.school().language());
        ItemWords itemWords = ItemWords.in(actor.school().language());
        int all = open.items().size();
        SittingHead head = head(ctx, actor, open, words.questionOf(item.position(), all));
        Optional<KeptAnswer> kept = Optional.ofNullable(open.answers().get(item.id()));
        boolean isKept = kept.isPresent() && refused.isEmpty();
        var page =
                new SittingPage(
                        head,
                        itemWords,
                        item.position(),
                        all,
                        item.id(),
                        doors.foundation().ids().random(),
                        open.seat(),
                        open.nextSequence(),
                        open.flagged().contains(item.id()),
                        refused.isPresent() ? "wrong" : isKept ? "saved" : "open",
                        refused.map(r -> words.refused())
                                .orElseGet(() -> state(actor, words, kept)),
                        AskedItem.of(itemWords, item, given(actor, item, kept, refused)));
        ctx.render("student/sitting.jte", Map.of("page", page));
    }

    private static String state(Actor actor, SittingWords words, Optional<KeptAnswer> kept) {
        Times times = Times.of(actor.school());
        return kept.map(k -> words.saved(times.time(k.receivedAt()))).orElseGet(words::notAnswered);
    }

    private static Given given(
            Actor actor, Item item, Optional<KeptAnswer> kept, Optional<Refused> refused) {
        return refused.map(r -> new Given(r.answer(), "", r.why()))
                .or(
                        () ->
                                kept.map(
                                        k ->
                                                new Given(
                                                        k.raw(),
                                                        Answered.reading(actor.school(), item, k),
                                                        "")))
                .orElse(Given.NOTHING);
    }

    void review(Context ctx, Actor actor, OpenSitting open, boolean notSure) {
        SittingWords words = SittingWords.in(actor.school().language());
        List<Integer> unanswered = open.unanswered().stream().map(Item::position).toList();
        var page =
                new ReviewPage(
                        head(ctx, actor, open, words.beforeYouHandIn()),
                        words.open(unanswered.size(), open.items().size()),
                        unanswered,
                        open.items().stream().map(i -> cell(open, i)).toList(),
                        words.sure(unanswered.size()),
                        notSure ? words.tickFirst() : "");
        ctx.render("student/review.jte", Map.of("page", page));
    }

    private static NumberCell cell(OpenSitting open, Item item) {
        return new NumberCell(
                item.position(),
                open.answers().containsKey(item.id()),
                open.flagged().contains(item.id()));
    }

    private SittingHead head(Context ctx, Actor actor, OpenSitting open, String title) {
        SittingWords words = SittingWords.in(actor.school().language());
        Frame frame = Frame.of(ctx, actor, title);
        return SittingHead.of(frame, words, open, doors.foundation().now());
    }
}
