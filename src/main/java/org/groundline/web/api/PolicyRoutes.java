package org.groundline.web.api;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Policy;
import org.groundline.school.PolicyRules;
import org.groundline.web.Doors;
import org.groundline.web.request.Percent;

/// The rule numbers of the school. The version is the entity tag.
final class PolicyRoutes {
    private final Doors doors;

    PolicyRoutes(Doors doors) {
        this.doors = doors;
    }

    record PolicyBody(
            String passMarkPercent, int topicItems, int numericSharePercent, int studentsToSpeak) {
        PolicyRules rules() {
            return new PolicyRules(
                    Percent.read("passMarkPercent", passMarkPercent),
                    topicItems,
                    numericSharePercent,
                    studentsToSpeak);
        }
    }

    void addTo(ApiRoutes routes) {
        routes.get("/policy", Action.READ_POLICY, this::show);
        routes.put("/policy", Action.CHANGE_POLICY, PolicyBody.class, this::change);
    }

    private void show(Context ctx, Actor actor) {
        Policy policy = doors.policies().current(actor.school());
        Tag.of(policy.version()).answer(ctx, Json.TYPE, Json.bytes(PolicyView.of(policy)));
    }

    private void change(Context ctx, Actor actor, PolicyBody body) {
        int since = doors.policies().current(actor.school()).version();
        Tag.of(since).requireMatch(ctx);
        doors.policies().change(actor, since, body.rules());
        show(ctx, actor);
    }
}
