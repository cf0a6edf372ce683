package org.groundline.web.student;

import io.javalin.http.Context;

import org.groundline.bank.Module;
import org.groundline.bank.Topic;
import org.groundline.error.Refusal;
import org.groundline.measure.TypedNumber;
import org.groundline.measure.TypedNumber.Way;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.sitting.Practices.Explained;
import org.groundline.sitting.Practices.PracticeItem;
import org.groundline.web.Doors;
import org.groundline.web.brief.BriefLink;
import org.groundline.web.brief.BriefWords;
import org.groundline.web.request.Errors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;
import org.groundline.web.student.AskedItem.Given;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Practising a topic, one item at a time.
final class PracticePages {
    private final Doors doors;

    PracticePages(Doors doors) {
        this.doors = doors;
    }

    void addTo(Routes routes) {
        routes.get("/{school}/practice/{topic}", Action.PRACTISE, this::show);
        routes.post("/{school}/practice/{topic}", Action.PRACTISE, this::answer);
        routes.get("/{school}/practice/{topic}/{sitting}/{item}", Action.PRACTISE, this::explained);
    }

    private void show(Context ctx, Actor actor) {
        PracticeItem waiting = doors.practices().next(actor, ctx.pathParam("topic"));
        render(ctx, actor, waiting, Given.NOTHING);
    }

    /// The sitting stands in the form as well: an answer to an item that was answered in another
    /// tab is shown with its explanation.
    private void answer(Context ctx, Actor actor) {
        requireTopic(ctx);
        AnswerForm form = AnswerForm.of(ctx);
        UUID sitting = form.sitting().orElseThrow(PracticePages::noSitting);
        if (asksBack(ctx, actor, form)) {
            return;
        }
        try {
            doors.practices().answer(actor, sitting, form.given(doors.foundation().now()));
            toExplained(ctx, actor, sitting, form.item());
        } catch (Refusal.Invalid | Refusal.Conflict | Refusal.Mismatch | Refusal.Busy e) {
            again(ctx, actor, sitting, form, e);
        }
    }

    /// Asks which number was meant before an answer that could be two is kept.
    private boolean asksBack(Context ctx, Actor actor, AnswerForm form) {
        if (!TypedNumber.hasUnclearDigits(form.answer())) {
            return false;
        }
        PracticeItem waiting = doors.practices().next(actor, ctx.pathParam("topic"));
        List<Way> ways = Answered.findWays(actor.school(), waiting.item(), form.answer());
        boolean asks = waiting.item().id().equals(form.item()) && !ways.isEmpty();
        if (asks) {
            render(ctx, actor, waiting, Given.unclear(form.answer().strip(), ways));
        }
        return asks;
    }

    private void requireTopic(Context ctx) {
        if (doors.bank().course().findTopic(ctx.pathParam("topic")).isEmpty()) {
            throw new Refusal.NotFound("The course has no such topic.");
        }
    }

    private static Refusal noSitting() {
        return new Refusal.Invalid("sitting", "The form does not say which practice it is of.");
    }

    private void again(Context ctx, Actor actor, UUID sitting, AnswerForm form, Refusal why) {
        PracticeItem waiting = doors.practices().next(actor, ctx.pathParam("topic"));
        if (!waiting.item().id().equals(form.item())) {
            toExplained(ctx, actor, sitting, form.item());
            return;
        }
        ctx.status(Errors.statusOf(why));
        render(ctx, actor, waiting, new Given(form.answer(), "", Errors.messageOf(why)));
    }

    private void render(Context ctx, Actor actor, PracticeItem waiting, Given given) {
        ItemWords words = ItemWords.in(actor.school().language());
        String topic = topicTitle(waiting.item().topic());
        var page =
                new PracticePage(
                        Frame.of(ctx, actor, words.practiceOf(topic)),
                        words,
                        waiting.item().topic(),
                        place(waiting.item().topic()),
                        brief(actor, waiting.item().topic()),
                        waiting.item().position(),
                        waiting.sitting(),
                        waiting.item().id(),
                        doors.foundation().ids().random(),
                        waiting.seat(),
                        AskedItem.of(words, waiting.item(), given));
        ctx.render("student/practice.jte", Map.of("page", page));
    }

    private void toExplained(Context ctx, Actor actor, UUID sitting, UUID item) {
        ctx.redirect(
                "/%s/practice/%s/%s/%s"
                        .formatted(actor.school().code(), ctx.pathParam("topic"), sitting, item));
    }

    private void explained(Context ctx, Actor actor) {
        Explained explained =
                doors.practices()
                        .explain(actor, Form.pathId(ctx, "sitting"), Form.pathId(ctx, "item"));
        ItemWords words = ItemWords.in(actor.school().language());
        String topic = explained.item().topic();
        var given = Answered.given(actor.school(), explained.item(), explained.answer());
        var item =
                ExplainedItem.of(
                        words,
                        explained.item(),
                        explained.key(),
                        explained.mark(),
                        Optional.of(given));
        Frame frame = Frame.of(ctx, actor, words.practiceOf(topicTitle(topic)));
        var page = new ExplainedPage(frame, words, topic, place(topic), brief(actor, topic), item);
        ctx.render("student/explained.jte", Map.of("page", page));
    }

    /// A topic that left the syllabus has no brief.
    private BriefLink brief(Actor actor, String id) {
        Topic topic = doors.bank().course().findTopic(id).orElse(new Topic(id, id, List.of()));
        return BriefLink.to(
                topic,
                doors.readings().listOwn(actor),
                "/" + actor.school().code(),
                BriefWords.in(actor.school().language()),
                Times.of(actor.school()));
    }

    private String topicTitle(String topic) {
        return doors.bank().course().findTopic(topic).map(t -> t.title()).orElse(topic);
    }

    /// Module and topic; a topic that left the syllabus keeps its id as its name.
    private String place(String topic) {
        return doors.bank().course().modules().stream()
                .filter(m -> m.topics().stream().anyMatch(t -> t.id().equals(topic)))
                .findFirst()
                .map(Module::title)
                .map(module -> module + " · " + topicTitle(topic))
                .orElse(topic);
    }
}
