package org.groundline.school;

import org.groundline.database.SchoolId;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/// A school on this server.
///
/// @param code its short name in every address, such as `kestrel`
/// @param zone in which its days and calendar months are counted
/// @param language BCP 47
public record School(SchoolId id, String code, String name, ZoneId zone, String language) {
    /// The school's day at an instant.
    public LocalDate dayOf(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }
}
