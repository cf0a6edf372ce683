package org.groundline.web.student;

import io.javalin.http.Context;

import org.groundline.bank.Module;
import org.groundline.database.SubjectId;
import org.groundline.record.TalkItem;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.sitting.Result;
import org.groundline.sitting.Sitting;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;

import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/// The result of a test, for its student and for staff.
final class ResultPages {
    private final Doors doors;

    ResultPages(Doors doors) {
        this.doors = doors;
    }

    void addTo(Routes routes) {
        routes.get("/{school}/sittings/{sitting}/result", Action.READ_RESULT, this::show);
    }

    private void show(Context ctx, Actor actor) {
        Result result = doors.sittings().getResult(actor, Form.pathId(ctx, "sitting"));
        Sitting.Facts facts = result.sitting().facts();
        ResultWords words = ResultWords.in(actor.school().language());
        String module =
                doors.bank()
                        .course()
                        .findModule(facts.scope())
                        .map(Module::title)
                        .orElse(facts.scope());
        Frame frame = Frame.of(ctx, actor, words.test(facts.stakes(), module));
        String student = doors.people().getPerson(actor.school(), facts.subject()).name();
        var view =
                new ResultView(
                        doors.bank().course(),
                        actor.school(),
                        words,
                        result,
                        openTalks(actor, facts.subject()));
        boolean own = actor.subject().equals(facts.subject());
        ctx.render("student/result.jte", Map.of("page", view.page(frame, student, own)));
    }

    /// The items that still wait for a talk; those that were talked through are not among them.
    private Set<UUID> openTalks(Actor actor, SubjectId student) {
        return doors.records().getRecord(actor, student).modules().stream()
                .flatMap(module -> module.toTalkThrough().stream())
                .map(TalkItem::item)
                .collect(Collectors.toUnmodifiableSet());
    }
}
