package org.groundline.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.error.Refusal;
import org.groundline.school.People.NewPerson;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.Optional;
import java.util.Set;

/// What a password's hash costs whoever wants to guess it.
class PasswordsTest {
    private static final String DEAR = "$argon2id$v=19$m=19456,t=2,p=1$";
    private static final String PRINTED = "everybody may read this";
    private static final TestServer SERVER = TestServer.start();
    private final School school =
            SERVER.givenSchool("s" + TestServer.newId().toString().substring(0, 8));

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    @Test
    void aPasswordMatchesItsHashAndNoOther() {
        var passwords = new Passwords();
        String hash = passwords.hash("a café by the hill");

        assertThat(hash).startsWith(DEAR);
        assertThat(passwords.matches("a café by the hill", hash)).isTrue();
        assertThat(passwords.matches("a cafe\u0301 by the hill", hash))
                .as("the same letters, typed on another keyboard")
                .isTrue();
        assertThat(passwords.matches("a cafe by the hill", hash)).isFalse();
        assertThat(passwords.hash("a café by the hill")).isNotEqualTo(hash);
        assertThat(passwords.matchesNobody("a café by the hill")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "everybody may read thi",
                "Everybody may read this",
                " everybody may read this"
            })
    void onlyThePrintedPasswordItselfIsHashedCheaply(String other) {
        var passwords = Passwords.withPrinted(PRINTED);

        assertThat(passwords.hash(other)).startsWith(DEAR);
        assertThat(passwords.hash(PRINTED)).doesNotStartWith(DEAR);
        assertThat(new Passwords().hash(PRINTED)).startsWith(DEAR);
        assertThat(passwords.matches(PRINTED, passwords.hash(PRINTED))).isTrue();
    }

    @Test
    void whoeverChangesAPrintedPasswordGetsADearHash() {
        var people = People.withPrintedPassword(SERVER.doors().foundation(), PRINTED);
        var wish = new NewPerson("Ada", "Person", "ada@printed.example", PRINTED);
        people.enter(school, Optional.empty(), wish, Set.of(Role.STUDENT));
        Logins logins = SERVER.doors().logins();
        String token = logins.logIn(school, wish.email(), PRINTED);
        Actor ada = logins.findActor(school, token).orElseThrow();
        String before = storedHash();

        logins.changePassword(ada, PRINTED, "a sentence of her own");
        String own = storedHash();
        logins.changePassword(ada, "a sentence of her own", PRINTED);

        assertThat(before).doesNotStartWith(DEAR);
        assertThat(own).startsWith(DEAR);
        assertThat(storedHash()).startsWith(DEAR);
    }

    private String storedHash() {
        return SERVER.database()
                .inSchool(
                        school.id(),
                        tx ->
                                tx.fetchSingle("select password_hash from credential")
                                        .get(0, String.class));
    }

    @Test
    void aPasswordHasTwelveLettersAtLeast() {
        Passwords.requireAcceptable("twelve chars");

        assertThatThrownBy(() -> Passwords.requireAcceptable("eleven char"))
                .isInstanceOf(Refusal.Invalid.class);
        assertThatThrownBy(() -> Passwords.requireAcceptable("x".repeat(257)))
                .isInstanceOf(Refusal.Invalid.class);
    }
}
