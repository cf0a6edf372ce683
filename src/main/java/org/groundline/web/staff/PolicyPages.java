package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Policy;
import org.groundline.school.PolicyRules;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Percent;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;
import org.groundline.web.staff.words.PolicyWords;
import org.groundline.web.staff.words.SharedWords;

import java.util.List;
import java.util.Map;

/// The rules in force, and entering the next version.
public final class PolicyPages {
    private final Doors doors;

    PolicyPages(Doors doors) {
        this.doors = doors;
    }

    /// @param since when it came into force
    /// @param rules each rule with its value, as they stand
    public record PolicyPage(
            Frame frame,
            PolicyWords words,
            SharedWords shared,
            int version,
            String since,
            List<Rule> rules,
            boolean mayChange,
            Returned form) {
        public PolicyPage {
            rules = List.copyOf(rules);
        }

        /// One rule.
        ///
        /// @param field under which it is entered
        /// @param value as it is entered
        /// @param told as it is told
        public record Rule(String field, String name, String value, String unit, String told) {}
    }

    void addTo(Routes routes) {
        routes.get(
                "/{school}/policy",
                Action.READ_POLICY,
                (ctx, actor) -> show(ctx, actor, Returned.NOTHING));
        routes.post("/{school}/policy", Action.CHANGE_POLICY, this::change);
    }

    private void show(Context ctx, Actor actor, Returned form) {
        actor.require(Action.READ_POLICY);
        Policy policy = doors.policies().current(actor.school());
        String language = actor.school().language();
        PolicyWords words = PolicyWords.in(language);
        var page =
                new PolicyPage(
                        Frame.of(ctx, actor, words.policy()),
                        words,
                        SharedWords.in(language),
                        policy.version(),
                        Times.of(actor.school()).dayAndTime(policy.inForce()),
                        rules(policy.rules(), words),
                        actor.may(Action.CHANGE_POLICY),
                        form);
        ctx.render("staff/policy.jte", Map.of("page", page));
    }

    private static List<PolicyPage.Rule> rules(PolicyRules rules, PolicyWords words) {
        return List.of(
                new PolicyPage.Rule(
                        "passMark",
                        words.passMark(),
                        Percent.markText(rules.passMark()),
                        words.percent(),
                        Percent.mark(rules.passMark())),
                count("topicItems", words.topicItems(), rules.topicItems(), words.items()),
                new PolicyPage.Rule(
                        "numericShare",
                        words.numericShare(),
                        String.valueOf(rules.numericShare()),
                        words.percent(),
                        Percent.mark(100 * rules.numericShare())),
                count(
                        "studentsToSpeak",
                        words.studentsToSpeak(),
                        rules.studentsToSpeak(),
                        words.studentsUnit()));
    }

    private static PolicyPage.Rule count(String field, String name, int value, String unit) {
        return new PolicyPage.Rule(
                field, name, String.valueOf(value), unit, value + "\u00a0" + unit);
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
        Returned.change(
                ctx,
                "/" + actor.school().code() + "/policy",
                form.typed(),
                () ->
                        doors.policies()
                                .change(actor, form.number("version", 1, 1_000_000), rules(form)),
                returned -> show(ctx, actor, returned));
    }

    private static PolicyRules rules(Form form) {
        return new PolicyRules(
                Percent.read("passMark", form.text("passMark").strip().replace(',', '.')),
                form.number("topicItems", 1, 100),
                form.number("numericShare", 0, 100),
                form.number("studentsToSpeak", 1, 1_000));
    }
}
