package org.groundline.school;

import org.groundline.database.SubjectId;

/// A person's own data; erasable.
public record Person(SubjectId subject, String givenName, String familyName, String email) {
    /// Given name, then family name.
    public String name() {
        return givenName + " " + familyName;
    }
}
