package org.groundline.web.api;

import java.util.List;
import java.util.UUID;

/// What people do in a school, by whichever way in.
interface Deeds {
    /// An item as whoever answers it sees it.
    record Seen(UUID sitting, int seat, UUID item) {}

    void enterStudent(String name);

    /// Authorises the instructor for winch launches, too.
    void authorise();

    void beginIntake(String name, String student);

    void changePolicy();

    void changePassword(String person);

    /// Says that a topic's brief was read.
    void acknowledge(String topic);

    /// The next item of a topic.
    Seen practise(String topic);

    void answerPractice(Seen seen, UUID clientId, String answer);

    void openTest(String module);

    /// Begins the test that is open, twice, and shows its paper.
    List<Seen> begin();

    void answer(Seen seen, UUID clientId, int sequence, String answer);

    void flag(Seen seen, boolean flagged);

    void handIn(UUID sitting);

    void debrief(UUID item, String outcome, String note);

    void demonstrate(String demonstration);

    void signOff(String module);

    /// Reverses the sign-off that stands.
    void reverse(String module, String reason);
}
