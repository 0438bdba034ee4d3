package org.cupwright.app.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.people.SignInByPin.Closed;
import org.cupwright.app.people.SignInByPin.Outcome;
import org.cupwright.app.people.SignInByPin.Refused;
import org.cupwright.app.people.SignInByPin.Wait;
import org.cupwright.app.people.SignInByPin.Welcome;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names and PINs on a shared phone. */
class SignInByPinTest {
    private static final String PIN = "2468";
    private static final String WRONG = "1357";

    @TempDir
    Path files;

    private MadePeople people;
    private Account ida;
    private UUID phone;

    @BeforeEach
    void open() {
        people = new MadePeople(files);
        ida = people.ida();
        phone = shared();
        for (String name : new String[] {"Bo", "Ash", "Kim"}) {
            String code = new Invite(people.session(ida.person()), people.random)
                    .person(name, Role.CHANGER)
                    .code();
            people.taking().take(code, name, MadePeople.OTHER);
        }
        set("Bo", PIN);
        set("Ash", "97531");
    }

    @AfterEach
    void close() {
        people.close();
    }

    private UUID shared() {
        return new Phones(people.folder, people.clock, people.random)
                .share(people.session(ida.person()), Optional.empty())
                .id();
    }

    private Account account(String name) {
        return people.folder
                .read(stores -> stores.people().named(name))
                .map(Account::of)
                .orElseThrow();
    }

    private SetPin setting(String name) {
        return new SetPin(people.session(account(name).person()), people.passwords, people.slowDown);
    }

    private void set(String name, String pin) {
        setting(name).set(MadePeople.OTHER, pin, MadePeople.ADDRESS);
    }

    private SignInByPin door() {
        return new SignInByPin(people.folder, people.clock, people.passwords, people.slowDown);
    }

    private Outcome attempt(String name, String pin) {
        return door().as(phone, name, pin);
    }

    @Test
    void thoseWhoSetAPinAreListedAndComeIn() {
        assertThat(door().names()).containsExactly("Ash", "Bo");
        assertThat(attempt("Bo", PIN)).isEqualTo(new Welcome(account("Bo")));
        assertThat(attempt("Ash", "97531")).isEqualTo(new Welcome(account("Ash")));
        assertThat(attempt("Ash", PIN)).isEqualTo(new Refused());
        assertThat(attempt("Kim", PIN)).isEqualTo(new Refused());
        assertThat(people.done()).endsWith(AuditKind.SIGNED_IN_BY_PIN, AuditKind.SIGNED_IN_BY_PIN);
        new Deactivate(people.session(ida.person())).person("Bo");
        assertThat(door().names()).containsExactly("Ash");
        assertThat(attempt("Bo", PIN)).isEqualTo(new Refused());
    }

    /** On somebody's own phone, on one that was ended, and on none it is worth nothing. */
    @Test
    void aPinCountsOnSharedPhonesAlone() {
        UUID own = new Phones(people.folder, people.clock, people.random)
                .keep(account("Bo"), Optional.empty())
                .id();
        assertThat(door().as(own, "Bo", PIN)).isEqualTo(new Closed());
        assertThat(door().as(new UUID(1, 1), "Bo", PIN)).isEqualTo(new Closed());
        people.clock.advance(Phones.SEASON);
        assertThat(attempt("Bo", PIN)).isEqualTo(new Closed());
        assertThat(people.signIn().as("Bo", PIN, MadePeople.ADDRESS)).isEqualTo(new SignIn.Refused());
    }

    @Test
    void wrongOnesForANameWaitLongerAndLongerAndTheTenthEndsIt() {
        for (int i = 0; i < 5; i++) {
            assertThat(attempt("Bo", WRONG)).isEqualTo(new Refused());
        }
        for (long wait : new long[] {1, 2, 4, 8}) {
            assertThat(attempt("Bo", PIN)).isEqualTo(new Wait(Duration.ofSeconds(wait)));
            people.clock.advance(Duration.ofSeconds(wait));
            assertThat(attempt("Bo", WRONG)).isEqualTo(new Refused());
        }
        people.clock.advance(Duration.ofSeconds(16));
        assertThat(attempt("Bo", WRONG)).isEqualTo(new Closed());
        assertThat(people.done()).endsWith(AuditKind.SHARED_PHONE_CLOSED);
        people.clock.advance(Duration.ofDays(1));
        assertThat(attempt("Bo", PIN)).isEqualTo(new Closed());
        phone = shared();
        assertThat(attempt("Bo", PIN)).isInstanceOf(Welcome.class);
    }

    /** Wrong ones of several names are counted together; a name's right one forgets that name's alone. */
    @Test
    void whoeverHasAPinDoesNotTryOthersTheLongerForIt() {
        for (int i = 0; i < 3; i++) {
            attempt("Ash", WRONG);
            assertThat(attempt("Bo", WRONG)).isEqualTo(new Refused());
            assertThat(attempt("Bo", PIN)).isInstanceOf(Welcome.class);
        }
        attempt("Ash", WRONG);
        attempt("Ash", WRONG);
        for (int i = 0; i < 4; i++) {
            assertThat(attempt("Kim", WRONG)).isEqualTo(new Refused());
        }
        assertThat(attempt("Bo", WRONG)).isEqualTo(new Closed());
    }

    @Test
    void tryingAPinKeepsNobodyFromThePassword() {
        for (int i = 0; i < 6; i++) {
            attempt("Bo", WRONG);
        }
        assertThat(people.signIn().as("Bo", MadePeople.OTHER, MadePeople.ADDRESS))
                .isInstanceOf(SignIn.Welcome.class);
    }

    @Test
    void anotherPinEndsWhatTheOldOneOpened() {
        var since = people.clock.instant();
        assertThat(door().still(account("Bo").id(), since)).isTrue();
        people.clock.advance(Duration.ofSeconds(1));
        set("Bo", "8642");
        assertThat(door().still(account("Bo").id(), since)).isFalse();
        assertThat(attempt("Bo", PIN)).isEqualTo(new Refused());
        assertThat(attempt("Bo", "8642")).isInstanceOf(Welcome.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "123", "1234567", "12a4", "٢٤٦٨", "1111", "2345", "987654", "0123"})
    void aPinHasFourToSixDigitsThatAreNotTheFirstToBeTried(String pin) {
        assertThatThrownBy(() -> set("Kim", pin)).isInstanceOf(Problem.class);
        assertThat(setting("Kim").isSet()).isFalse();
    }

    @Test
    void aPinIsSetByThePassword() {
        assertThatThrownBy(() -> setting("Kim").set("a wrong password", PIN, MadePeople.ADDRESS))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.what().key()).isEqualTo("people.problem.pinPassword"));
        assertThat(setting("Kim").isSet()).isFalse();
        set("Kim", PIN);
        assertThat(setting("Kim").isSet()).isTrue();
        assertThat(people.done()).endsWith(AuditKind.PIN_SET);
        assertThat(people.audit().toString()).doesNotContain(PIN);
    }

    @Test
    void aChangerMakesNoPhoneShared() {
        Phones phones = new Phones(people.folder, people.clock, people.random);
        assertThatThrownBy(() -> phones.share(people.session(account("Bo").person()), Optional.empty()))
                .isInstanceOf(Problem.class);
    }
}
