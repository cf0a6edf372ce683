package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Policy;
import org.groundline.school.PolicyRules;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Percent;
import org.groundline.web.request.Routes;

import java.math.BigDecimal;
import java.util.Map;

/// The rules in force, and entering the next version.
public final class PolicyPages {
    private final Doors doors;

    PolicyPages(Doors doors) {
        this.doors = doors;
    }

    /// @param passMark as written into the form
    public record PolicyPage(
            Frame frame,
            StaffWords words,
            Policy policy,
            String since,
            String markText,
            String passMark,
            boolean mayChange,
            String message) {}

    void addTo(Routes routes) {
        routes.get("/{school}/policy", Action.READ_POLICY, (ctx, actor) -> show(ctx, actor, ""));
        routes.post("/{school}/policy", Action.CHANGE_POLICY, this::change);
    }

    private void show(Context ctx, Actor actor, String message) {
        actor.require(Action.READ_POLICY);
        Policy policy = doors.policies().current(actor.school());
        StaffWords words = StaffWords.in(actor.school().language());
        int mark = policy.rules().passMark();
        var page =
                new PolicyPage(
                        Frame.of(ctx, actor, words.policy()),
                        words,
                        policy,
                        new Dates(actor.school()).dayAndTime(policy.inForce()),
                        Percent.mark(mark),
                        BigDecimal.valueOf(mark, 2).stripTrailingZeros().toPlainString(),
                        actor.may(Action.CHANGE_POLICY),
                        message);
        ctx.render("staff/policy.jte", Map.of("page", page));
    }

    private void change(Context ctx, Actor actor) {
        Form form =
                Form.of(
                        ctx,
                        "version",
                        "passMark",
                        "topicItems",
                        "numericShare",
                        "studentsToSpeak");
        try {
            var rules =
                    new PolicyRules(
                            hundredths(form.text("passMark")),
                            form.number("topicItems", 1, 100),
                            form.number("numericShare", 0, 100),
                            form.number("studentsToSpeak", 1, 1_000));
            doors.policies().change(actor, form.number("version", 1, 1_000_000), rules);
            ctx.redirect("/" + actor.school().code() + "/policy");
        } catch (Refusal.Invalid | Refusal.Stale e) {
            ctx.status(e instanceof Refusal.Stale ? 412 : 400);
            show(ctx, actor, String.valueOf(e.getMessage()));
        }
    }

    private static int hundredths(String percent) {
        String plain = percent.strip().replace(',', '.');
        if (!plain.matches("\\d{1,3}(\\.\\d{1,2})?")) {
            throw new Refusal.Invalid(
                    "passMark", "Write the pass mark in percent, such as 75 or 72.5.");
        }
        return new BigDecimal(plain).movePointRight(2).intValueExact();
    }
}
