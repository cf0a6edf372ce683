package org.groundline.authoring;

import org.groundline.bank.OwnLists;
import org.groundline.bank.Question;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// What a school has made of the bank, as files in the form of the shipped ones.
public final class OwnFiles {
    private final Foundation foundation;
    private final SchoolBanks banks;

    public OwnFiles(Foundation foundation, SchoolBanks banks) {
        this.foundation = foundation;
        this.banks = banks;
    }

    /// Returns the texts of the files by their paths: one for each question of the school's own
    /// that is live, in the folder of its module, and its lists where they are not empty.
    public Map<String, String> of(Actor actor) {
        actor.require(Action.READ_BANK);
        return Desk.open(foundation, banks, actor, OwnFiles::files);
    }

    private static Map<String, String> files(Desk desk) {
        var school = desk.actor().school();
        OwnLists lists = new OwnListRepository(desk.tx(), school.id()).lists();
        Map<String, String> files = new TreeMap<>(desk.banks().shipped().files(lists));
        SchoolBanks.lives(desk.tx(), school, school.dayOf(desk.foundation().now()))
                .forEach(
                        (id, life) -> {
                            Optional<Edition> live = life.live();
                            live.flatMap(edition -> desk.read(edition.text()).question())
                                    .map(Question::module)
                                    .ifPresent(
                                            module ->
                                                    files.put(
                                                            module + "/own-" + id + ".yaml",
                                                            live.orElseThrow().text()));
                        });
        return files;
    }
}
