package org.groundline.web.author;

import io.javalin.http.Context;

import org.groundline.authoring.Dossier;
import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/// Two texts of one question side by side.
public final class ComparePages {
    private static final String SHIPPED = "shipped";

    private final Doors doors;

    ComparePages(Doors doors) {
        this.doors = doors;
    }

    /// @param names the texts there are, `shipped` or the number of an edition
    public record ComparePage(
            Frame frame,
            BankWords words,
            String id,
            List<String> names,
            String left,
            String right,
            List<TextDifference.Part> parts) {
        public ComparePage {
            names = List.copyOf(names);
            parts = List.copyOf(parts);
        }
    }

    void addTo(Routes routes) {
        routes.get("/{school}/bank/questions/{question}/comparison", Action.READ_BANK, this::show);
    }

    private void show(Context ctx, Actor actor) {
        Dossier dossier = doors.dossiers().get(actor, ctx.pathParam("question"));
        List<String> names = names(dossier);
        String right = chosen(ctx, "right", names.getLast());
        String left = chosen(ctx, "left", names.get(Math.max(0, names.size() - 2)));
        BankWords words = BankWords.in(actor.school().language());
        var page =
                new ComparePage(
                        Frame.of(ctx, actor, words.comparison(dossier.id())),
                        words,
                        dossier.id(),
                        names,
                        left,
                        right,
                        TextDifference.between(text(dossier, left), text(dossier, right)));
        ctx.render("author/compare.jte", Map.of("page", page));
    }

    private static List<String> names(Dossier dossier) {
        List<String> names = new ArrayList<>();
        if (dossier.shipped().isPresent()) {
            names.add(SHIPPED);
        }
        dossier.editions().forEach(s -> names.add(String.valueOf(s.edition().number())));
        return names;
    }

    private static String chosen(Context ctx, String name, String otherwise) {
        return Objects.requireNonNullElse(ctx.queryParam(name), otherwise);
    }

    private String text(Dossier dossier, String name) {
        if (name.equals(SHIPPED)) {
            return doors.bank().findText(dossier.id()).orElseThrow(ComparePages::noText);
        }
        return dossier.editions().stream()
                .map(Dossier.Stand::edition)
                .filter(e -> String.valueOf(e.number()).equals(name))
                .findFirst()
                .orElseThrow(ComparePages::noText)
                .text();
    }

    private static Refusal noText() {
        return new Refusal.NotFound("This question has no such edition.");
    }
}
