package org.groundline.web.api;

import org.groundline.school.People.NewAuthorisation;

import java.time.LocalDate;
import java.util.List;

/// An instructor's authorisation for the school's discipline, as sent.
///
/// @param launchMethods `foot`, `winch`, `aerotow`
/// @param validFrom a day of the school; it and the last one are included
record AuthorisationBody(
        String number,
        List<String> launchMethods,
        String issuer,
        LocalDate validFrom,
        LocalDate validUntil) {
    NewAuthorisation wish() {
        return new NewAuthorisation(number, launchMethods, issuer, validFrom, validUntil);
    }
}
