package org.groundline.web.author;

import io.javalin.http.Context;

import org.groundline.authoring.Dossier;
import org.groundline.authoring.Event.Validity;
import org.groundline.authoring.State;
import org.groundline.bank.Jurisdiction;
import org.groundline.bank.NumericQuestion;
import org.groundline.bank.Question;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// One question with its editions, remarks, and what may be done to it.
final class QuestionPages {
    private final Doors doors;

    QuestionPages(Doors doors) {
        this.doors = doors;
    }

    void addTo(Routes routes) {
        String question = "/{school}/bank/questions/{question}";
        routes.get(question, Action.READ_BANK, (ctx, actor) -> show(ctx, actor, Returned.NOTHING));
        routes.post(
                question + "/submitted",
                Action.WRITE_QUESTION,
                (ctx, actor) ->
                        change(
                                ctx,
                                actor,
                                Form.of(ctx, "edition"),
                                form -> doors.editions().submit(actor, form.id("edition"))));
        routes.post(question + "/approved", Action.REVIEW_QUESTION, this::approve);
        routes.post(
                question + "/sent-back",
                Action.REVIEW_QUESTION,
                (ctx, actor) ->
                        change(
                                ctx,
                                actor,
                                Form.of(ctx, "edition", "reason"),
                                form ->
                                        doors.reviews()
                                                .sendBack(
                                                        actor,
                                                        form.id("edition"),
                                                        form.text("reason"))));
        routes.post(
                question + "/retired",
                Action.REVIEW_QUESTION,
                (ctx, actor) ->
                        change(
                                ctx,
                                actor,
                                Form.of(ctx, "edition", "reason"),
                                form ->
                                        doors.reviews()
                                                .retire(
                                                        actor,
                                                        form.id("edition"),
                                                        form.text("reason"))));
        routes.post(
                question + "/withdrawn",
                Action.REVIEW_QUESTION,
                (ctx, actor) ->
                        change(
                                ctx,
                                actor,
                                Form.of(ctx, "reason"),
                                form ->
                                        doors.reviews()
                                                .withdraw(actor, id(ctx), form.text("reason"))));
        routes.post(
                question + "/restored",
                Action.REVIEW_QUESTION,
                (ctx, actor) ->
                        change(
                                ctx,
                                actor,
                                Form.of(ctx, "reason"),
                                form ->
                                        doors.reviews()
                                                .restore(actor, id(ctx), form.text("reason"))));
        routes.post(
                question + "/remarks",
                Action.READ_BANK,
                (ctx, actor) ->
                        change(
                                ctx,
                                actor,
                                Form.of(ctx, "remark"),
                                form ->
                                        doors.reviews()
                                                .remark(actor, id(ctx), form.text("remark"))));
    }

    private static String id(Context ctx) {
        return ctx.pathParam("question");
    }

    private interface Change {
        void carryOut(Form form);
    }

    private void change(Context ctx, Actor actor, Form form, Change change) {
        Returned.change(
                ctx,
                "/" + actor.school().code() + "/bank/questions/" + id(ctx),
                form.typed(),
                () -> change.carryOut(form),
                returned -> show(ctx, actor, returned));
    }

    private void approve(Context ctx, Actor actor) {
        change(
                ctx,
                actor,
                Form.of(ctx, "edition", "version", "from", "until"),
                form -> {
                    Optional<LocalDate> until =
                            form.text("until").isBlank()
                                    ? Optional.empty()
                                    : Optional.of(form.day("until"));
                    doors.reviews()
                            .approve(
                                    actor,
                                    form.id("edition"),
                                    form.text("version"),
                                    new Validity(form.day("from"), until));
                });
    }

    private void show(Context ctx, Actor actor, Returned form) {
        Dossier dossier = doors.dossiers().get(actor, id(ctx));
        BankWords words = BankWords.in(actor.school().language());
        Map<UUID, String> names = doors.people().namesIn(actor.school());
        Times times = Times.of(actor.school());
        var page =
                new QuestionPage(
                        Frame.of(ctx, actor, words.question(dossier.id())),
                        words,
                        form,
                        dossier.id(),
                        facts(dossier, words),
                        shown(dossier).map(q -> PosedView.of(words, doors.bank().pose(q, 1), "q")),
                        shown(dossier).filter(NumericQuestion.class::isInstance).isPresent(),
                        editions(dossier, words, names, times),
                        dossier.remarks().stream()
                                .map(
                                        r ->
                                                new QuestionPage.Said(
                                                        name(names, r.author().value(), words),
                                                        times.dayAndTime(r.writtenAt()),
                                                        r.text()))
                                .toList(),
                        deeds(actor, dossier),
                        actor.school().dayOf(doors.foundation().now()).toString(),
                        instances(ctx, dossier, words));
        ctx.render("author/question.jte", Map.of("page", page));
    }

    /// What the page shows: the latest text where it can be read, else what is asked or shipped.
    private static Optional<Question> shown(Dossier dossier) {
        return dossier.latest()
                .flatMap(Dossier.Stand::question)
                .or(dossier::asked)
                .or(dossier::shipped);
    }

    private List<PosedView> instances(Context ctx, Dossier dossier, BankWords words) {
        return ctx.queryParam("instances") == null
                ? List.of()
                : shown(dossier).map(q -> Instances.of(doors.bank(), q, words)).orElse(List.of());
    }

    private List<QuestionPage.Fact> facts(Dossier dossier, BankWords words) {
        List<QuestionPage.Fact> facts = new ArrayList<>();
        shown(dossier)
                .ifPresent(
                        q -> {
                            facts.add(
                                    new QuestionPage.Fact(
                                            words.objective(),
                                            q.objective()
                                                    + " "
                                                    + doors.bank()
                                                            .objective(q.objective())
                                                            .text()));
                            facts.add(new QuestionPage.Fact(words.level(), q.level().word()));
                            facts.add(
                                    new QuestionPage.Fact(
                                            words.safetyCritical(),
                                            words.yesOrNo(q.safetyCritical())));
                            q.jurisdiction()
                                    .map(Jurisdiction::text)
                                    .ifPresent(
                                            where ->
                                                    facts.add(
                                                            new QuestionPage.Fact(
                                                                    words.jurisdiction(), where)));
                            facts.add(
                                    new QuestionPage.Fact(
                                            words.version(), q.version().substring(0, 12)));
                        });
        facts.add(
                new QuestionPage.Fact(words.origin(), words.origin(dossier.shipped().isPresent())));
        facts.add(
                new QuestionPage.Fact(
                        words.askedToday(),
                        dossier.withdrawn()
                                ? words.state("withdrawn")
                                : words.yesOrNo(dossier.asked().isPresent())));
        return facts;
    }

    private static List<QuestionPage.Stood> editions(
            Dossier dossier, BankWords words, Map<UUID, String> names, Times times) {
        return dossier.editions().stream()
                .map(
                        stand ->
                                new QuestionPage.Stood(
                                        stand.edition().number(),
                                        words.state(stand.state().word()),
                                        name(names, stand.edition().author().value(), words),
                                        times.dayAndTime(stand.edition().writtenAt()),
                                        stand.reviewer()
                                                .map(r -> name(names, r.value(), words))
                                                .orElse(""),
                                        stand.validity().map(words::validity).orElse(""),
                                        stand.edition()
                                                .origin()
                                                .map(o -> o.change().word())
                                                .orElse("")))
                .toList()
                .reversed();
    }

    private static String name(Map<UUID, String> names, UUID subject, BankWords words) {
        return Optional.ofNullable(names.get(subject)).orElse(words.somebody());
    }

    private static QuestionPage.Deeds deeds(Actor actor, Dossier dossier) {
        Optional<Dossier.Stand> latest = dossier.latest();
        boolean review = actor.may(Action.REVIEW_QUESTION);
        boolean write = actor.may(Action.WRITE_QUESTION);
        boolean own = latest.filter(l -> l.edition().author().equals(actor.subject())).isPresent();
        Optional<String> submittable = id(latest, State.DRAFT);
        Optional<String> reviewable =
                review && !own ? id(latest, State.SUBMITTED) : Optional.empty();
        return new QuestionPage.Deeds(
                write,
                write
                        ? submittable.filter(s -> latest.orElseThrow().question().isPresent())
                        : Optional.empty(),
                reviewable,
                own && latest.filter(l -> l.state() == State.SUBMITTED).isPresent(),
                latest.flatMap(Dossier.Stand::question).map(Question::version).orElse(""),
                review ? live(dossier) : Optional.empty(),
                review && !dossier.withdrawn() && (dossier.asked().isPresent()),
                review && dossier.withdrawn());
    }

    private static Optional<String> id(Optional<Dossier.Stand> latest, State state) {
        return latest.filter(l -> l.state() == state).map(l -> l.edition().id().toString());
    }

    private static Optional<String> live(Dossier dossier) {
        return dossier.editions().stream()
                .filter(s -> s.state() == State.LIVE || s.state() == State.REVIEWED)
                .map(s -> s.edition().id().toString())
                .reduce((first, second) -> second);
    }
}
