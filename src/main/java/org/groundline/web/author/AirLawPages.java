package org.groundline.web.author;

import io.javalin.http.Context;

import org.groundline.authoring.AirLaw;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/// The way to a school's own questions on the law of its country, step by step.
public final class AirLawPages {
    private final Doors doors;

    AirLawPages(Doors doors) {
        this.doors = doors;
    }

    public record AirLawPage(
            Frame frame,
            BankWords words,
            Returned form,
            AirLaw.Pack pack,
            List<String> shippedPacks,
            boolean mayChoose,
            boolean mayWrite) {
        public AirLawPage {
            shippedPacks = List.copyOf(shippedPacks);
        }

        public String country() {
            return pack.choice().map(AirLaw.Choice::country).orElse("");
        }

        public boolean chosen(String code) {
            return pack.choice().filter(choice -> choice.packs().contains(code)).isPresent();
        }

        /// How many points have a question.
        public long covered() {
            return pack.points().stream().filter(point -> point.live() > 0).count();
        }
    }

    void addTo(Routes routes) {
        String here = "/{school}/bank/air-law";
        routes.get(here, Action.READ_BANK, (ctx, actor) -> show(ctx, actor, Returned.NOTHING));
        routes.post(here, Action.CHANGE_POLICY, this::choose);
    }

    private void show(Context ctx, Actor actor, Returned form) {
        BankWords words = BankWords.in(actor.school().language());
        var page =
                new AirLawPage(
                        Frame.of(ctx, actor, words.airLaw()),
                        words,
                        form,
                        doors.airLaw().pack(actor),
                        doors.airLaw().shippedPacks(),
                        actor.may(Action.CHANGE_POLICY),
                        actor.may(Action.WRITE_QUESTION));
        ctx.render("author/air-law.jte", Map.of("page", page));
    }

    private void choose(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "country", "pack");
        Returned.change(
                ctx,
                "/" + actor.school().code() + "/bank/air-law",
                form.typed(),
                () ->
                        doors.airLaw()
                                .choose(
                                        actor,
                                        new AirLaw.Choice(
                                                form.text("country")
                                                        .strip()
                                                        .toUpperCase(Locale.ROOT),
                                                Set.copyOf(form.texts("pack")))),
                returned -> show(ctx, actor, returned));
    }
}
