package org.groundline.school;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/// What an instructor may sign for: a discipline, by some launch methods, between two days of the
/// school, both included.
public record Authorisation(
        UUID id,
        String number,
        String discipline,
        List<String> launchMethods,
        String issuer,
        LocalDate validFrom,
        LocalDate validUntil) {
    public Authorisation {
        launchMethods = List.copyOf(launchMethods);
    }

    /// Whether it covers a discipline on a day.
    public boolean covers(String wanted, LocalDate day) {
        return discipline.equals(wanted) && !day.isBefore(validFrom) && !day.isAfter(validUntil);
    }
}
