package org.groundline.school;

import org.groundline.database.SchoolId;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/// The schools of this server, and the one-time link that sets up the first.
public final class Schools {
    private static final Pattern CODE = Pattern.compile("[a-z][a-z0-9-]{1,30}");
    private static final Duration LINK_LIFE = Duration.ofDays(7);

    private final Foundation foundation;
    private final Tokens tokens = new Tokens();

    public Schools(Foundation foundation) {
        this.foundation = foundation;
    }

    /// What is needed to make a school.
    ///
    /// @param code two to 31 small letters, digits and hyphens, a letter first
    /// @param zone IANA name
    public record NewSchool(String code, String name, String zone, String language) {}

    /// Makes a school with the default policy and nobody in it.
    ///
    /// @throws Refusal.Invalid if code, name or zone cannot be used
    /// @throws Refusal.Conflict if the code is taken
    public School create(NewSchool wish) {
        School school = checked(wish);
        try {
            foundation
                    .database()
                    .outsideSchools(
                            sql -> new SchoolRepository(sql).insert(school, foundation.now()));
        } catch (Violation e) {
            throw new Refusal.Conflict(
                    "There is a school with the code %s already.".formatted(wish.code()));
        }
        new Policies(foundation).enterDefault(school);
        return school;
    }

    private School checked(NewSchool wish) {
        if (!CODE.matcher(wish.code()).matches()) {
            throw new Refusal.Invalid(
                    "code",
                    "A school's code is 2 to 31 small letters, digits and hyphens and begins with a letter.");
        }
        if (wish.name().isBlank() || wish.name().length() > 120) {
            throw new Refusal.Invalid("name", "A school's name has 1 to 120 letters.");
        }
        return new School(
                new SchoolId(foundation.ids().next()),
                wish.code(),
                wish.name().strip(),
                zone(wish),
                wish.language());
    }

    private static ZoneId zone(NewSchool wish) {
        try {
            return ZoneId.of(wish.zone());
        } catch (DateTimeException e) {
            throw new Refusal.Invalid(
                    "zone",
                    "%s is no time zone; write one like Europe/Vienna.".formatted(wish.zone()));
        }
    }

    /// Returns the school of a code.
    public Optional<School> findSchool(String code) {
        return foundation
                .database()
                .outsideSchools(sql -> new SchoolRepository(sql).findByCode(code));
    }

    /// Returns the school of a code.
    ///
    /// @throws Refusal.NotFound if there is none
    public School getSchool(String code) {
        return findSchool(code)
                .orElseThrow(
                        () ->
                                new Refusal.NotFound(
                                        "There is no school with this code on this server."));
    }

    /// Returns all schools, by code.
    public List<School> listSchools() {
        return foundation.database().outsideSchools(sql -> new SchoolRepository(sql).listAll());
    }

    /// Makes a new one-time link and forgets older ones; returns its token, which is stored
    /// nowhere.
    public String newSetUpToken() {
        String token = tokens.next();
        foundation
                .database()
                .outsideSchools(
                        sql ->
                                new SchoolRepository(sql)
                                        .replaceSetUpLink(Tokens.digest(token), foundation.now()));
        return token;
    }

    /// Refuses a set-up link that is unknown, used or too old.
    public void requireSetUpToken(String token) {
        boolean open =
                foundation
                        .database()
                        .outsideSchools(
                                sql ->
                                        new SchoolRepository(sql)
                                                .isSetUpLinkOpen(
                                                        Tokens.digest(token),
                                                        foundation.now().minus(LINK_LIFE)));
        if (!open) {
            throw linkGone();
        }
    }

    /// Uses a set-up link up; of two who try at once, one gets it.
    public void useSetUpToken(String token) {
        boolean used =
                foundation
                        .database()
                        .outsideSchools(
                                sql ->
                                        new SchoolRepository(sql)
                                                .useSetUpLink(
                                                        Tokens.digest(token),
                                                        foundation.now(),
                                                        foundation.now().minus(LINK_LIFE)));
        if (!used) {
            throw linkGone();
        }
    }

    private static Refusal linkGone() {
        return new Refusal.NotFound(
                "This set-up link is not valid: it was used, replaced, or is older than seven days. Start the server again to print a new one.");
    }
}
