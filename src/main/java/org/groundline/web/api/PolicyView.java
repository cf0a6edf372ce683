package org.groundline.web.api;

import org.groundline.school.Policy;
import org.groundline.school.PolicyRules;
import org.groundline.web.request.Percent;

import java.time.Instant;

/// The policy in force.
///
/// @param topicItems items of a topic that a sitting must hold before the topic's rate counts it
/// @param studentsToSpeak different students below which a rate stays silent
record PolicyView(
        int version,
        Instant inForceAt,
        String passMarkPercent,
        int topicItems,
        int numericSharePercent,
        int studentsToSpeak) {
    static PolicyView of(Policy policy) {
        PolicyRules rules = policy.rules();
        return new PolicyView(
                policy.version(),
                policy.inForce(),
                Percent.markText(rules.passMark()),
                rules.topicItems(),
                rules.numericShare(),
                rules.studentsToSpeak());
    }
}
