package org.groundline.authoring;

import static java.util.stream.Collectors.groupingBy;

import org.groundline.bank.OwnLists;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.bank.SchoolUse;
import org.groundline.database.SchoolId;
import org.groundline.ledger.Foundation;
import org.groundline.school.School;
import org.jooq.DSLContext;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/// The bank of each school: what is shipped and what the school has made of it.
///
/// A school's bank is kept in memory until something happens to it or its day ends; what happened
/// on another server is seen, too, as the database is asked each time.
public final class SchoolBanks {
    private final Foundation foundation;
    private final Questions shipped;
    private final Map<SchoolId, Kept> kept = new ConcurrentHashMap<>();

    private record Kept(int revision, LocalDate day, Questions bank) {}

    public SchoolBanks(Foundation foundation, Questions shipped) {
        this.foundation = foundation;
        this.shipped = shipped;
    }

    /// The bank as it came with the program.
    public Questions shipped() {
        return shipped;
    }

    /// Returns the bank of a school as it is asked today.
    public Questions of(School school) {
        return foundation.database().inSchool(school.id(), tx -> in(tx, school));
    }

    /// Returns the bank of a school as it is asked today, within a transaction.
    public Questions in(DSLContext tx, School school) {
        int revision = new EditionRepository(tx, school.id()).countChanges();
        LocalDate today = school.dayOf(foundation.now());
        Kept known = kept.get(school.id());
        if (known != null && known.revision() == revision && known.day().equals(today)) {
            return known.bank();
        }
        Questions bank = revision == 0 ? shipped : shipped.usedAs(use(tx, school, today));
        kept.put(school.id(), new Kept(revision, today, bank));
        return bank;
    }

    private SchoolUse use(DSLContext tx, School school, LocalDate today) {
        OwnLists lists = new OwnListRepository(tx, school.id()).lists();
        List<Question> own = new ArrayList<>();
        Set<String> withdrawn = new HashSet<>();
        lives(tx, school, today)
                .forEach(
                        (id, life) -> {
                            life.live()
                                    .flatMap(e -> shipped.read(e.text(), lists).question())
                                    .ifPresent(own::add);
                            if (life.isWithdrawn()) {
                                withdrawn.add(id);
                            }
                        });
        return new SchoolUse(own, withdrawn, jurisdictions(tx, school));
    }

    private static Set<String> jurisdictions(DSLContext tx, School school) {
        Set<String> codes = new TreeSet<>();
        new OwnListRepository(tx, school.id())
                .findChoice()
                .ifPresent(
                        choice -> {
                            codes.add(choice.country());
                            codes.addAll(choice.packs());
                        });
        return codes;
    }

    /// The lives of all questions to which something happened in a school, by id.
    static Map<String, Life> lives(DSLContext tx, School school, LocalDate today) {
        var rows = new EditionRepository(tx, school.id());
        Map<String, List<Edition>> editions =
                rows.listEditions().stream().collect(groupingBy(Edition::questionId));
        Map<String, List<Event>> events =
                rows.listEvents().stream().collect(groupingBy(Event::questionId));
        Map<String, Life> lives = new TreeMap<>();
        Set<String> ids = new TreeSet<>(editions.keySet());
        ids.addAll(events.keySet());
        for (String id : ids) {
            lives.put(
                    id,
                    new Life(
                            editions.getOrDefault(id, List.of()),
                            events.getOrDefault(id, List.of()),
                            today));
        }
        return lives;
    }
}
