package org.groundline.web.author;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.joining;

import io.javalin.http.Context;

import org.groundline.authoring.Dossiers.Listed;
import org.groundline.bank.Level;
import org.groundline.bank.Module;
import org.groundline.bank.Question;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Markdown;
import org.groundline.web.request.Routes;

import java.net.URLEncoder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/// The questions of a school, to be browsed and searched.
final class BankPages {
    private static final int ON_A_PAGE = 50;
    private static final int LONGEST_START = 160;

    private final Doors doors;

    BankPages(Doors doors) {
        this.doors = doors;
    }

    void addTo(Routes routes) {
        routes.get("/{school}/bank", Action.READ_BANK, this::show);
    }

    private void show(Context ctx, Actor actor) {
        Wanted wanted = Wanted.of(ctx);
        BankWords words = BankWords.in(actor.school().language());
        Frame frame = Frame.of(ctx, actor, words.questionBank());
        List<Listed> all = doors.dossiers().list(actor);
        List<Listed> found = all.stream().filter(wanted::fits).toList();
        int from = from(ctx, found.size());
        int to = Math.min(from + ON_A_PAGE, found.size());
        var page =
                new BankPage(
                        frame,
                        words,
                        wanted.words(),
                        choices(wanted),
                        found.subList(from, to).stream().map(l -> row(frame, l, words)).toList(),
                        words.found(found.size(), all.size()),
                        from == 0 ? "" : address(ctx, wanted, Math.max(0, from - ON_A_PAGE)),
                        to == found.size() ? "" : address(ctx, wanted, to),
                        actor.may(Action.WRITE_QUESTION));
        ctx.render("author/bank.jte", Map.of("page", page));
    }

    private static int from(Context ctx, int size) {
        String text = Objects.requireNonNullElse(ctx.queryParam("from"), "");
        int from = text.matches("\\d{1,6}") ? Integer.parseInt(text) : 0;
        return Math.clamp(from, 0, Math.max(0, size - 1));
    }

    private List<BankPage.Choice> choices(Wanted wanted) {
        List<String> places = new ArrayList<>();
        for (Module module : doors.bank().course().modules()) {
            places.add(module.id());
            module.topics().forEach(topic -> places.add(topic.id()));
        }
        if (!wanted.place().isEmpty() && !places.contains(wanted.place())) {
            places.add(wanted.place()); // an objective, which is linked from elsewhere
        }
        List<String> levels = Arrays.stream(Level.values()).map(Level::word).toList();
        return List.of(
                new BankPage.Choice("place", wanted.place(), places),
                new BankPage.Choice("level", wanted.level(), levels),
                new BankPage.Choice("kind", wanted.kind(), List.of("fixed", "numeric")),
                new BankPage.Choice("state", wanted.state(), Wanted.states()));
    }

    private static BankPage.Row row(Frame frame, Listed listed, BankWords words) {
        return new BankPage.Row(
                frame.root() + "/bank/questions/" + listed.id(),
                listed.id(),
                listed.question().map(BankPages::start).orElse(words.textWithErrors()),
                listed.question().map(Question::objective).orElse(""),
                listed.question().map(q -> q.level().word()).orElse(""),
                Wanted.kindOf(listed.question()),
                words.state(Wanted.stateOf(listed)),
                listed.asked() ? "" : words.notAsked());
    }

    private static String start(Question question) {
        String stem = question.stem();
        String start =
                stem.length() <= LONGEST_START
                        ? stem
                        : stem.substring(0, stem.lastIndexOf(' ', LONGEST_START)) + " …";
        return Markdown.plain(start);
    }

    private static String address(Context ctx, Wanted wanted, int from) {
        Map<String, String> query = new LinkedHashMap<>();
        query.put("words", wanted.words());
        query.put("place", wanted.place());
        query.put("level", wanted.level());
        query.put("kind", wanted.kind());
        query.put("state", wanted.state());
        query.put("from", String.valueOf(from));
        return query.entrySet().stream()
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), UTF_8))
                .collect(joining("&", ctx.path() + "?", ""));
    }
}
