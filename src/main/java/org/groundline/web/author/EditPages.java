package org.groundline.web.author;

import io.javalin.http.Context;

import org.groundline.authoring.Change;
import org.groundline.authoring.Dossier;
import org.groundline.authoring.Edition;
import org.groundline.authoring.Editions.Writing;
import org.groundline.bank.Manuscript;
import org.groundline.bank.QuestionText;
import org.groundline.bank.file.Finding;
import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Errors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/// Writing a question: a form for a fixed question, a text for a template, both with what the bank
/// says to it and how it would look.
final class EditPages {
    private static final String[] FIELDS = {
        "text", "since", "change", "deed", "objective", "id", "level", "safetyCritical", "stem",
        "option1", "option2", "option3", "option4", "idea1", "idea2", "idea3", "idea4", "key",
        "rationale", "practice", "source1", "at1", "source2", "at2", "jurisdiction", "illustration"
    };

    private final Doors doors;

    EditPages(Doors doors) {
        this.doors = doors;
    }

    void addTo(Routes routes) {
        routes.get("/{school}/bank/new", Action.WRITE_QUESTION, this::begin);
        routes.get("/{school}/bank/questions/{question}/edit", Action.WRITE_QUESTION, this::edit);
        routes.post("/{school}/bank/drafts", Action.WRITE_QUESTION, this::write);
        routes.post("/{school}/bank/check", Action.WRITE_QUESTION, this::check);
    }

    private void begin(Context ctx, Actor actor) {
        String objective = parameter(ctx, "objective");
        String jurisdiction =
                doors.airLaw().isNational(objective)
                        ? doors.airLaw()
                                .pack(actor)
                                .choice()
                                .map(c -> c.country() + ": ")
                                .orElse("")
                        : "";
        boolean asText = parameter(ctx, "as").equals("template");
        show(
                ctx,
                actor,
                asText
                        ? Draft.ofText(BankWords.in(actor.school().language()).templateStart())
                        : Draft.of(FormText.blank(objective, jurisdiction)),
                0,
                Returned.NOTHING);
    }

    private static String parameter(Context ctx, String name) {
        return Objects.requireNonNullElse(ctx.queryParam(name), "");
    }

    private void edit(Context ctx, Actor actor) {
        Dossier dossier = doors.dossiers().get(actor, ctx.pathParam("question"));
        String text =
                dossier.latest()
                        .map(stand -> stand.edition().text())
                        .or(() -> doors.bank().findText(dossier.id()))
                        .orElseThrow();
        Optional<QuestionText> parts =
                parameter(ctx, "as").equals("text") ? Optional.empty() : QuestionText.find(text);
        show(
                ctx,
                actor,
                parts.map(Draft::of).orElseGet(() -> Draft.ofText(text)),
                dossier.latest().map(s -> s.edition().number()).orElse(0),
                Returned.NOTHING);
    }

    /// What is being written.
    ///
    /// @param parts empty where the text is written as such
    private record Draft(String text, Optional<QuestionText> parts) {
        static Draft of(QuestionText parts) {
            return new Draft(parts.write(), Optional.of(parts));
        }

        static Draft ofText(String text) {
            return new Draft(text, Optional.empty());
        }

        static Draft of(Form form) {
            return form.text("text").isEmpty()
                    ? of(FormText.of(form))
                    : ofText(form.text("text").replace("\r\n", "\n"));
        }
    }

    private void write(Context ctx, Actor actor) {
        Form form = Form.of(ctx, FIELDS);
        Draft draft = Draft.of(form);
        int since = form.number("since", 0, 1_000_000);
        if (!form.text("deed").equals("keep")) {
            show(ctx, actor, draft, since, Returned.NOTHING);
            return;
        }
        try {
            var writing = new Writing(draft.text(), since, Change.ofWord(form.text("change")));
            Edition kept = doors.editions().keep(actor, writing);
            ctx.redirect("/" + actor.school().code() + "/bank/questions/" + kept.questionId());
        } catch (Refusal.Invalid | Refusal.Stale e) {
            ctx.status(Errors.statusOf(e));
            String field = e instanceof Refusal.Invalid invalid ? invalid.field() : "";
            show(ctx, actor, draft, since, new Returned(form.typed(), field, Errors.messageOf(e)));
        }
    }

    /// Only what the bank says, for the page that asks while somebody types.
    private void check(Context ctx, Actor actor) {
        Draft draft = Draft.of(Form.of(ctx, FIELDS));
        BankWords words = BankWords.in(actor.school().language());
        ctx.render("author/findings.jte", Map.of("said", said(actor, draft, words)));
    }

    private EditPage.Said said(Actor actor, Draft draft, BankWords words) {
        if (draft.text().isBlank()) {
            return new EditPage.Said(words, List.of(), false, List.of());
        }
        Manuscript read = doors.editions().check(actor, draft.text());
        boolean withLines = draft.parts().isEmpty();
        return new EditPage.Said(
                words,
                read.findings().stream().map(f -> said(f, withLines, words)).toList(),
                read.question().isPresent(),
                read.question().map(q -> Instances.of(doors.bank(), q, words)).orElse(List.of()));
    }

    private static EditPage.Finding said(Finding finding, boolean withLine, BankWords words) {
        return new EditPage.Finding(
                words.severity(finding.level()),
                (withLine ? words.line(finding.line()) : "") + finding.message());
    }

    private void show(Context ctx, Actor actor, Draft draft, int since, Returned form) {
        BankWords words = BankWords.in(actor.school().language());
        Frame frame = Frame.of(ctx, actor, words.writing());
        var page =
                new EditPage(
                        frame,
                        words,
                        form,
                        draft.text(),
                        draft.parts(),
                        since,
                        EditChoices.of(doors, actor),
                        since == 0 && ctx.method().name().equals("GET") && isBlank(draft)
                                ? new EditPage.Said(words, List.of(), false, List.of())
                                : said(actor, draft, words));
        ctx.render("author/edit.jte", Map.of("page", page));
    }

    private static boolean isBlank(Draft draft) {
        return draft.parts().filter(parts -> parts.stem().isEmpty()).isPresent();
    }
}
