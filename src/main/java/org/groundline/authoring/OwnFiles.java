package org.groundline.authoring;

import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;

import java.util.Map;
import java.util.TreeMap;

/// What a school has made of the bank, as files in the form of the shipped ones.
public final class OwnFiles {
    private final Desks desks;

    public OwnFiles(Foundation foundation, SchoolBanks banks) {
        this.desks = new Desks(foundation, banks);
    }

    /// Returns the texts of the files by their paths: one for each question of the school's own
    /// that is live, in the folder of its module, and its lists where they are not empty.
    public Map<String, String> of(Actor actor) {
        actor.require(Action.READ_BANK);
        return desks.open(actor, OwnFiles::files);
    }

    private static Map<String, String> files(Desk desk) {
        Map<String, String> files = new TreeMap<>(desk.lists().files());
        for (Life life : desk.lives().values()) {
            life.live().ifPresent(edition -> put(desk, edition, files));
        }
        return files;
    }

    private static void put(Desk desk, Edition edition, Map<String, String> files) {
        desk.question(edition)
                .ifPresent(
                        question ->
                                files.put(
                                        question.module() + "/own-" + question.id() + ".yaml",
                                        edition.text()));
    }
}
