package org.groundline.demo;

import org.groundline.authoring.AirLaw;
import org.groundline.authoring.SchoolBanks;
import org.groundline.bank.Questions;
import org.groundline.database.Database;
import org.groundline.ledger.Foundation;
import org.groundline.reading.Readings;
import org.groundline.record.Debriefs;
import org.groundline.record.Demonstrations;
import org.groundline.record.SignOffs;
import org.groundline.record.StudentRecords;
import org.groundline.school.Logins;
import org.groundline.school.People;
import org.groundline.school.Schools;
import org.groundline.sitting.AnswerWriter;
import org.groundline.sitting.Openings;
import org.groundline.sitting.Practices;
import org.groundline.sitting.Sittings;

import java.time.InstantSource;

/// The doors through which the invented school's people act, on a clock and with seeds of their
/// own.
record DemoDoors(
        Foundation foundation,
        Questions bank,
        KnownSeeds seeds,
        Schools schools,
        People people,
        Logins logins,
        Openings openings,
        Sittings sittings,
        Practices practices,
        Readings readings,
        StudentRecords records,
        Debriefs debriefs,
        Demonstrations demonstrations,
        SignOffs signOffs) {
    /// Builds the doors. Tests may be held at any time: they count for nobody real.
    ///
    /// @param password everybody's, printed at the start
    static DemoDoors on(
            Database database,
            InstantSource clock,
            Questions bank,
            AnswerWriter writer,
            KnownSeeds seeds,
            String password) {
        Foundation foundation = Foundation.on(database, clock);
        var banks = new SchoolBanks(foundation, bank);
        var openings = new Openings(foundation, banks, () -> true);
        var sittings = new Sittings(foundation, banks, writer, openings, seeds);
        var records = new StudentRecords(foundation, bank.course(), sittings);
        var logins = new Logins(foundation);
        return new DemoDoors(
                foundation,
                bank,
                seeds,
                new Schools(foundation),
                People.withPrintedPassword(foundation, password),
                logins,
                openings,
                sittings,
                new Practices(foundation, banks, writer, seeds),
                new Readings(foundation, bank),
                records,
                new Debriefs(foundation),
                new Demonstrations(foundation, bank.course()),
                new SignOffs(
                        foundation, bank.course(), records, logins, new AirLaw(foundation, banks)));
    }
}
