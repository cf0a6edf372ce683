package org.groundline.web.brief;

import io.javalin.http.Context;

import org.groundline.bank.Brief;
import org.groundline.bank.Course;
import org.groundline.bank.Module;
import org.groundline.reading.Reading;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.brief.BriefListPage.ModulePart;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;

import java.util.List;
import java.util.Map;

/// Reading briefs, and saying so.
public final class BriefPages {
    private final Doors doors;
    private final Course course;

    public BriefPages(Doors doors) {
        this.doors = doors;
        this.course = doors.bank().course();
    }

    public void addTo(Routes routes) {
        routes.get("/{school}/briefs", Action.READ_BRIEF, this::list);
        routes.get("/{school}/briefs/{topic}", Action.READ_BRIEF, this::show);
        routes.post("/{school}/briefs/{topic}", Action.ACKNOWLEDGE_BRIEF, this::acknowledge);
        routes.get("/{school}/modules/{module}/briefs", Action.READ_BRIEF, this::module);
    }

    private void list(Context ctx, Actor actor) {
        BriefWords words = BriefWords.in(actor.school().language());
        Frame frame = Frame.of(ctx, actor, words.briefs());
        Map<String, Reading> readings = doors.readings().listOwn(actor);
        List<ModulePart> modules =
                course.modules().stream()
                        .map(m -> part(m, readings, frame.root(), words, Times.of(actor.school())))
                        .toList();
        ctx.render("brief/list.jte", Map.of("page", new BriefListPage(frame, words, modules)));
    }

    private static ModulePart part(
            Module module,
            Map<String, Reading> readings,
            String root,
            BriefWords words,
            Times times) {
        boolean some = module.topics().stream().anyMatch(t -> readings.containsKey(t.id()));
        return new ModulePart(
                module.id(),
                module.title(),
                some ? printed(root, module.id()) : "",
                module.topics().stream()
                        .map(t -> BriefLink.to(t, readings, root, words, times))
                        .toList());
    }

    private static String printed(String root, String module) {
        return root + "/modules/" + module + "/briefs";
    }

    private void show(Context ctx, Actor actor) {
        show(ctx, actor, Returned.NOTHING);
    }

    private void show(Context ctx, Actor actor, Returned form) {
        BriefWords words = BriefWords.in(actor.school().language());
        Brief brief = doors.readings().getBrief(actor, ctx.pathParam("topic"));
        Reading reading = doors.readings().getOwn(actor, brief);
        BriefSheet sheet = BriefSheet.of(brief, course, words, 0);
        Frame frame = Frame.of(ctx, actor, sheet.title());
        boolean practises = actor.mayAtAll(Action.PRACTISE);
        var page =
                new BriefPage(
                        frame,
                        words,
                        sheet,
                        brief.version(),
                        reading instanceof Reading.Current,
                        words.state(reading, Times.of(actor.school())),
                        actor.mayAtAll(Action.ACKNOWLEDGE_BRIEF),
                        practises ? frame.root() + "/practice/" + brief.topic() : "",
                        actor.mayAtAll(Action.SIT) ? frame.root() + "/course" : "",
                        printed(frame.root(), brief.module()),
                        form.message());
        ctx.render("brief/brief.jte", Map.of("page", page));
    }

    private void acknowledge(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "version");
        String topic = ctx.pathParam("topic");
        Returned.change(
                ctx,
                "/" + actor.school().code() + "/briefs/" + topic,
                Map.of(),
                () -> doors.readings().acknowledge(actor, topic, form.text("version")),
                refused -> show(ctx, actor, refused));
    }

    private void module(Context ctx, Actor actor) {
        BriefWords words = BriefWords.in(actor.school().language());
        String id = ctx.pathParam("module");
        List<BriefSheet> sheets =
                doors.readings().listBriefs(actor, id).stream()
                        .map(brief -> BriefSheet.of(brief, course, words, 1))
                        .toList();
        Module module = course.findModule(id).orElseThrow();
        Frame frame = Frame.of(ctx, actor, words.briefsOf(module.title()));
        ctx.render("brief/module.jte", Map.of("page", new ModuleBriefsPage(frame, words, sheets)));
    }
}
