package org.groundline.web.author;

import io.javalin.http.Context;

import org.groundline.bank.Misconception;
import org.groundline.bank.Source;
import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/// The misconceptions and sources that a school adds for its own questions.
public final class OwnWordPages {
    private final Doors doors;

    OwnWordPages(Doors doors) {
        this.doors = doors;
    }

    public record OwnWordPage(
            Frame frame,
            BankWords words,
            Returned form,
            List<Misconception> misconceptions,
            List<Source> sources,
            boolean mayWrite) {
        public OwnWordPage {
            misconceptions = List.copyOf(misconceptions);
            sources = List.copyOf(sources);
        }

        public List<String> reads() {
            return Arrays.stream(Source.Read.values()).map(Source.Read::word).toList();
        }
    }

    void addTo(Routes routes) {
        String here = "/{school}/bank/lists";
        routes.get(here, Action.READ_BANK, (ctx, actor) -> show(ctx, actor, Returned.NOTHING));
        routes.post(here + "/misconceptions", Action.WRITE_QUESTION, this::enterIdea);
        routes.post(here + "/sources", Action.WRITE_QUESTION, this::enterSource);
    }

    private void show(Context ctx, Actor actor, Returned form) {
        var lists = doors.ownWords().lists(actor);
        BankWords words = BankWords.in(actor.school().language());
        var page =
                new OwnWordPage(
                        Frame.of(ctx, actor, words.ownLists()),
                        words,
                        form,
                        lists.misconceptions(),
                        lists.sources(),
                        actor.may(Action.WRITE_QUESTION));
        ctx.render("author/lists.jte", Map.of("page", page));
    }

    private void enterIdea(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "id", "wrong", "right", "feedback");
        change(
                ctx,
                actor,
                form,
                () ->
                        doors.ownWords()
                                .enter(
                                        actor,
                                        new Misconception(
                                                form.text("id").strip(),
                                                form.text("wrong").strip(),
                                                form.text("right").strip(),
                                                form.text("feedback").strip())));
    }

    private void enterSource(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "sourceId", "title", "publisher", "year", "read");
        change(
                ctx,
                actor,
                form,
                () ->
                        doors.ownWords()
                                .enter(
                                        actor,
                                        new Source(
                                                form.text("sourceId").strip(),
                                                form.text("title").strip(),
                                                form.text("publisher").strip(),
                                                form.text("year").strip(),
                                                read(form.text("read")))));
    }

    private static Source.Read read(String word) {
        return Arrays.stream(Source.Read.values())
                .filter(read -> read.word().equals(word))
                .findFirst()
                .orElseThrow(
                        () -> new Refusal.Invalid("read", "Say how well you know the source."));
    }

    private void change(Context ctx, Actor actor, Form form, Runnable change) {
        Returned.change(
                ctx,
                "/" + actor.school().code() + "/bank/lists",
                form.typed(),
                change,
                returned -> show(ctx, actor, returned));
    }
}
