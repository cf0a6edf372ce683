package org.groundline.web.request;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.School;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/// What stands around every page: title, school, way about, who is logged in, the caution.
///
/// @param root the address of the school, `/kestrel`; empty where there is none
/// @param here the address of this page without its query
/// @param csrf the form token, empty for somebody who is not logged in
public record Frame(
        String title,
        Optional<School> school,
        Optional<Actor> actor,
        String root,
        String here,
        String csrf,
        List<Link> way,
        Words words) {
    public Frame {
        way = List.copyOf(way);
    }

    /// A place to go to.
    public record Link(String address, String text) {}

    /// The frame of a page for somebody who is logged in.
    public static Frame of(Context ctx, Actor actor, String title) {
        School school = actor.school();
        String root = "/" + school.code();
        Words words = Words.in(school.language());
        return new Frame(
                title,
                Optional.of(school),
                Optional.of(actor),
                root,
                ctx.path(),
                Objects.requireNonNullElse(ctx.attribute(Guard.CSRF_FIELD), ""),
                way(actor, root, words),
                words);
    }

    /// The frame of a page for somebody who is not logged in.
    public static Frame open(Context ctx, Optional<School> school, String title) {
        String root = school.map(s -> "/" + s.code()).orElse("");
        Words words = Words.in(school.map(School::language).orElse("en"));
        return new Frame(title, school, Optional.empty(), root, ctx.path(), "", List.of(), words);
    }

    private static List<Link> way(Actor actor, String root, Words words) {
        List<Link> way = new ArrayList<>();
        if (actor.mayAtAll(Action.SIT)) {
            way.add(new Link(root + "/course", words.myCourse()));
        }
        if (actor.may(Action.READ_BOARD)) {
            way.add(new Link(root + "/board", words.classBoard()));
        }
        if (actor.may(Action.READ_OPENING)) {
            way.add(new Link(root + "/tests", words.tests()));
        }
        if (actor.mayAtAll(Action.READ_BRIEF)) {
            way.add(new Link(root + "/briefs", words.briefs()));
        }
        if (actor.may(Action.READ_RATES)) {
            way.add(new Link(root + "/rates", words.passRates()));
        }
        if (actor.may(Action.READ_BANK)) {
            way.add(new Link(root + "/bank", words.questionBank()));
        }
        if (actor.may(Action.READ_PEOPLE)) {
            way.add(new Link(root + "/people", words.people()));
        }
        if (actor.may(Action.READ_POLICY)) {
            way.add(new Link(root + "/policy", words.policy()));
        }
        return way;
    }
}
