package org.cupwright.app.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.cupwright.app.people.SignIn.Outcome;
import org.cupwright.app.people.SignIn.Refused;
import org.cupwright.app.people.SignIn.Wait;
import org.cupwright.app.people.SignIn.Welcome;
import org.cupwright.app.storage.AuditKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SignInTest {
    @TempDir
    Path files;

    private MadePeople people;
    private Account ida;

    @BeforeEach
    void open() {
        people = new MadePeople(files);
        ida = people.ida();
    }

    @AfterEach
    void close() {
        people.close();
    }

    private Outcome attempt(String name, String password) {
        return people.signIn().as(name, password, MadePeople.ADDRESS);
    }

    private static Wait seconds(long seconds) {
        return new Wait(Duration.ofSeconds(seconds));
    }

    @Test
    void theRightPasswordLetsIn() {
        assertThat(attempt("ida", MadePeople.PASSWORD)).isEqualTo(new Welcome(ida));
        assertThat(people.done()).endsWith(AuditKind.SIGNED_IN);
    }

    @Test
    void whoeverIsUnknownIsRefusedAlike() {
        assertThat(attempt("Ida", "a wrong password")).isEqualTo(new Refused());
        assertThat(attempt("Nobody", MadePeople.PASSWORD)).isEqualTo(new Refused());
        assertThat(attempt("", "")).isEqualTo(new Refused());
        assertThat(people.done()).doesNotContain(AuditKind.SIGNED_IN);
    }

    /** The fifth wrong try costs a second, each further one twice as long, and no more than a quarter of an hour. */
    @Test
    void wrongTriesForANameWaitLongerAndLonger() {
        for (int i = 0; i < 5; i++) {
            assertThat(attempt("Ida", "a wrong password")).isEqualTo(new Refused());
        }
        for (long wait : new long[] {1, 2, 4, 8, 16, 32, 64, 128, 256, 512, 900, 900}) {
            assertThat(attempt("IDA", MadePeople.PASSWORD)).isEqualTo(seconds(wait));
            people.clock.advance(Duration.ofSeconds(wait).minusMillis(1));
            assertThat(attempt("Ida", MadePeople.PASSWORD)).isEqualTo(new Wait(Duration.ofMillis(1)));
            people.clock.advance(Duration.ofMillis(1));
            assertThat(attempt("Ida", "a wrong password")).isEqualTo(new Refused());
        }
        people.clock.advance(Duration.ofSeconds(900));
        assertThat(attempt("Ida", MadePeople.PASSWORD)).isInstanceOf(Welcome.class);
        assertThat(attempt("Ida", MadePeople.PASSWORD)).isInstanceOf(Welcome.class);
    }

    @Test
    void aNameThatNobodyHasWaitsAlike() {
        for (int i = 0; i < 5; i++) {
            assertThat(attempt("Nobody", "a wrong password")).isEqualTo(new Refused());
        }
        assertThat(attempt("nobody", "a wrong password")).isEqualTo(seconds(1));
        assertThat(attempt("Ida", MadePeople.PASSWORD)).isInstanceOf(Welcome.class);
    }

    @Test
    void wrongTriesFromAnAddressWaitWhateverTheName() {
        for (int i = 0; i < 20; i++) {
            assertThat(attempt("Nobody " + i, "a wrong password")).isEqualTo(new Refused());
        }
        assertThat(attempt("Ida", MadePeople.PASSWORD)).isEqualTo(seconds(1));
        assertThat(people.signIn().as("Ida", MadePeople.PASSWORD, "192.0.2.8")).isInstanceOf(Welcome.class);
        people.clock.advance(Duration.ofSeconds(1));
        assertThat(attempt("Ida", MadePeople.PASSWORD)).isInstanceOf(Welcome.class);
    }

    /** Whoever has an account does not try others' passwords the longer for it. */
    @Test
    void oneRightTryDoesNotClearAnAddress() {
        for (int i = 0; i < 19; i++) {
            attempt("Nobody " + i, "a wrong password");
        }
        assertThat(attempt("Ida", MadePeople.PASSWORD)).isInstanceOf(Welcome.class);
        assertThat(attempt("Nobody", "a wrong password")).isEqualTo(new Refused());
        assertThat(attempt("Nobody", "a wrong password")).isEqualTo(seconds(1));
    }

    @Test
    void addressesOfOneHouseholdAreOne() {
        assertThat(AddressPart.of("2001:db8:1:2::1")).isEqualTo(AddressPart.of("2001:db8:1:2:ffff::9"));
        assertThat(AddressPart.of("2001:db8:1:2::1")).isNotEqualTo(AddressPart.of("2001:db8:1:3::1"));
        assertThat(AddressPart.of("::ffff:192.0.2.7")).isEqualTo("192.0.2.7");
        assertThat(AddressPart.of("192.0.2.7")).isEqualTo("192.0.2.7");
        assertThat(AddressPart.of(":::::")).isEqualTo(":::::");
    }

    /** Names without end do not fill the memory, and an old try is forgotten. */
    @Test
    void whatIsRememberedHasBounds() {
        for (int i = 0; i < 5; i++) {
            people.slowDown.begin("first", "a");
        }
        assertThat(people.slowDown.begin("first", "b")).isPresent();
        for (int i = 0; i < SlowDown.MOST; i++) {
            people.slowDown.begin("name " + i, "address " + i);
        }
        assertThat(people.slowDown.begin("first", "b")).isEmpty();
        for (int i = 0; i < 5; i++) {
            people.slowDown.begin("late", "c");
        }
        people.clock.advance(SlowDown.FORGOTTEN);
        assertThat(people.slowDown.begin("late", "c")).isEmpty();
        assertThat(people.slowDown.begin("late", "c")).isEmpty();
    }

    /** The fifth wrong try is written down, of a name that nobody has as well, but not that name. */
    @Test
    void slowedSignInsAreInTheAudit() {
        for (String name : new String[] {"Ida", "a password in the wrong field"}) {
            for (int i = 0; i < 6; i++) {
                attempt(name, "a wrong password");
            }
        }
        assertThat(people.done().stream().filter(AuditKind.SIGN_IN_SLOWED::equals))
                .hasSize(2);
        assertThat(people.audit().toString()).doesNotContain("wrong");
    }

    @Test
    void aSignInCountsUntilTheAccountChanges() {
        assertThat(people.signIn().still(ida.id(), ida.changedAt())).contains(ida);
        assertThat(people.signIn().still(ida.id(), ida.changedAt().minusSeconds(1)))
                .isEmpty();
        people.folder.write(stores -> {
            stores.people().replace(stores.people().find(ida.id()).orElseThrow().left(MadePeople.START));
            return Optional.empty();
        });
        assertThat(people.signIn().still(ida.id(), ida.changedAt())).isEmpty();
        assertThat(attempt("Ida", MadePeople.PASSWORD)).isEqualTo(new Refused());
    }
}
