package org.groundline.web.api;

import org.groundline.school.Authorisation;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/// What an instructor may sign for.
record AuthorisationView(
        UUID authorisation,
        String number,
        String discipline,
        List<String> launchMethods,
        String issuer,
        LocalDate validFrom,
        LocalDate validUntil) {
    static AuthorisationView of(Authorisation authorisation) {
        return new AuthorisationView(
                authorisation.id(),
                authorisation.number(),
                authorisation.discipline(),
                authorisation.launchMethods(),
                authorisation.issuer(),
                authorisation.validFrom(),
                authorisation.validUntil());
    }
}
