package org.groundline.web;

import org.groundline.authoring.AirLaw;
import org.groundline.authoring.Dossiers;
import org.groundline.authoring.Editions;
import org.groundline.authoring.OwnFiles;
import org.groundline.authoring.OwnWords;
import org.groundline.authoring.Reviews;
import org.groundline.authoring.SchoolBanks;
import org.groundline.bank.Questions;
import org.groundline.insight.PassRates;
import org.groundline.ledger.Foundation;
import org.groundline.reading.Readings;
import org.groundline.record.Debriefs;
import org.groundline.record.Demonstrations;
import org.groundline.record.SignOffs;
import org.groundline.record.StudentRecords;
import org.groundline.school.Logins;
import org.groundline.school.People;
import org.groundline.school.Policies;
import org.groundline.school.Schools;
import org.groundline.sitting.AnswerWriter;
import org.groundline.sitting.Openings;
import org.groundline.sitting.Practices;
import org.groundline.sitting.QuestionLanguages;
import org.groundline.sitting.Sittings;

import java.util.function.BooleanSupplier;

/// The doors of all floors below, as pages and API use them.
public record Doors(
        Foundation foundation,
        Questions bank,
        Schools schools,
        People people,
        Policies policies,
        Logins logins,
        Openings openings,
        Sittings sittings,
        Practices practices,
        Readings readings,
        QuestionLanguages languages,
        StudentRecords records,
        Debriefs debriefs,
        Demonstrations demonstrations,
        SignOffs signOffs,
        PassRates rates,
        Dossiers dossiers,
        Editions editions,
        Reviews reviews,
        OwnWords ownWords,
        OwnFiles ownFiles,
        AirLaw airLaw) {
    /// Builds the doors from the ground up.
    ///
    /// @param mayCount whether tests that count may be held now
    public static Doors on(
            Foundation foundation, Questions bank, AnswerWriter writer, BooleanSupplier mayCount) {
        var banks = new SchoolBanks(foundation, bank);
        var openings = new Openings(foundation, banks, mayCount);
        var sittings = new Sittings(foundation, banks, writer, openings);
        var records = new StudentRecords(foundation, bank.course(), sittings);
        var logins = new Logins(foundation);
        var airLaw = new AirLaw(foundation, banks);
        return new Doors(
                foundation,
                bank,
                new Schools(foundation),
                new People(foundation),
                new Policies(foundation),
                logins,
                openings,
                sittings,
                new Practices(foundation, banks, writer),
                new Readings(foundation, bank),
                new QuestionLanguages(foundation, bank),
                records,
                new Debriefs(foundation),
                new Demonstrations(foundation, bank.course()),
                new SignOffs(foundation, bank.course(), records, logins, airLaw),
                new PassRates(foundation, bank.course()),
                new Dossiers(foundation, banks),
                new Editions(foundation, banks),
                new Reviews(foundation, banks),
                new OwnWords(foundation, banks),
                new OwnFiles(foundation, banks),
                airLaw);
    }
}
