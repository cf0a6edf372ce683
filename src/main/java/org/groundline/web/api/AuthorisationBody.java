package org.groundline.web.api;

import org.groundline.error.Refusal;
import org.groundline.school.People.NewAuthorisation;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;

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
    private static final int LONGEST = 80;
    private static final Set<String> LAUNCH_METHODS = Set.of("foot", "winch", "aerotow");

    NewAuthorisation wish() {
        require(isNamed(number), "number", "A number has 1 to 80 letters.");
        require(isNamed(issuer), "issuer", "An issuer has 1 to 80 letters.");
        require(
                !launchMethods.isEmpty() && LAUNCH_METHODS.containsAll(launchMethods),
                "launchMethods",
                "Launch methods are foot, winch and aerotow; at least one.");
        require(
                !validUntil.isBefore(validFrom),
                "validUntil",
                "An authorisation does not end before it begins.");
        return new NewAuthorisation(
                number.strip(), launchMethods, issuer.strip(), validFrom, validUntil);
    }

    private static boolean isNamed(String text) {
        return !text.isBlank() && text.length() <= LONGEST;
    }

    private static void require(boolean holds, String field, String otherwise) {
        if (!holds) {
            throw new Refusal.Invalid(field, otherwise);
        }
    }
}
