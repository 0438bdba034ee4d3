package org.cupwright.app.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.cupwright.app.people.Phones.Known;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Phones that are known again, how long, and what ends it. */
class PhonesTest {
    @TempDir
    Path files;

    private MadePeople people;
    private Account ida;
    private Account bo;
    private Phones phones;

    @BeforeEach
    void open() {
        people = new MadePeople(files);
        ida = people.ida();
        bo = joined("Bo");
        phones = new Phones(people.folder, people.clock, people.random);
    }

    @AfterEach
    void close() {
        people.close();
    }

    private Account joined(String name) {
        String code = new Invite(people.session(ida.person()), people.random)
                .person(name, Role.CHANGER)
                .code();
        return people.taking().take(code, name, MadePeople.OTHER);
    }

    private String kept(Account account) {
        return phones.keep(account, Optional.empty()).shows().orElseThrow();
    }

    /** As a phone does that has a signal: it shows the next time what it was told to. */
    private String backAndOn(String shown) {
        return phones.back(shown).flatMap(Known::shows).orElseThrow();
    }

    private PhonesOfAll ofAll() {
        return new PhonesOfAll(people.session(ida.person()));
    }

    @Test
    void whoeverIsKeptComesBackAndShowsSomethingElseTheNextTime() {
        String first = kept(bo);
        Known back = phones.back(first).orElseThrow();
        assertThat(back.account()).contains(bo);
        String second = back.shows().orElseThrow();
        assertThat(second).isNotEqualTo(first);
        assertThat(backAndOn(second)).isNotIn(first, second);
        assertThat(people.done()).endsWith(AuditKind.PHONE_KEPT);
    }

    @Test
    void aSeasonIsTheLongestHoweverOftenItComesBack() {
        String shown = kept(bo);
        for (int day = 0; day < 239; day++) {
            people.clock.advance(Duration.ofDays(1));
            shown = backAndOn(shown);
        }
        people.clock.advance(Duration.ofDays(1).minusMillis(1));
        shown = backAndOn(shown);
        people.clock.advance(Duration.ofMillis(1));
        assertThat(phones.back(shown)).isEmpty();
        assertThat(ofAll().list()).isEmpty();
    }

    /** A page asks for several things at once, with the same in hand. */
    @Test
    void whatIsAskedForAtOneTimeIsAnsweredByOneSecret() {
        String first = kept(bo);
        String second = backAndOn(first);
        people.clock.advance(Phones.AT_ONE_TIME.minusMillis(1));
        Known again = phones.back(first).orElseThrow();
        assertThat(again.account()).contains(bo);
        assertThat(again.shows()).isEmpty();
        assertThat(phones.back(second)).isPresent();
    }

    /** No signal any more when the answer came: the phone has what it had, and is let in. */
    @Test
    void anAnswerThatIsLostEndsNothing() {
        String first = kept(bo);
        backAndOn(first);
        people.clock.advance(Duration.ofDays(1));
        String third = backAndOn(first);
        people.clock.advance(Duration.ofDays(1));
        assertThat(phones.back(third)).isPresent();
        assertThat(people.done()).doesNotContain(AuditKind.PHONE_COPIED);
    }

    /** Whoever copied it first, thief or person: the second of the two is noticed, and neither is in afterwards. */
    @Test
    void aCopyEndsItForBoth() {
        String copied = kept(bo);
        String owners = backAndOn(backAndOn(copied));
        people.clock.advance(Duration.ofMinutes(2));
        assertThat(phones.back(copied)).isEmpty();
        assertThat(people.done()).endsWith(AuditKind.PHONE_COPIED);
        assertThat(phones.back(owners)).isEmpty();

        String other = kept(bo);
        String thiefs = backAndOn(other);
        people.clock.advance(Duration.ofMinutes(2));
        backAndOn(other);
        assertThat(phones.back(thiefs)).isEmpty();
        assertThat(people.done()).endsWith(AuditKind.PHONE_COPIED);
    }

    @Test
    void whatIsMadeUpIsNobody() {
        String shown = kept(bo);
        assertThat(phones.back("")).isEmpty();
        assertThat(phones.back(shown + "x")).isEmpty();
        assertThat(phones.back("00000000-0000-0000-0000-000000000000" + shown.substring(36)))
                .isEmpty();
        assertThat(phones.back(shown)).isPresent();
    }

    @Test
    void anotherPasswordEndsEveryPhoneOfTheAccountAndNoOther() {
        String bos = kept(bo);
        String idas = kept(ida);
        new ChangePassword(people.session(bo.person()), people.passwords, people.slowDown)
                .change(MadePeople.OTHER, MadePeople.PASSWORD, MadePeople.ADDRESS);
        assertThat(phones.back(bos)).isEmpty();
        assertThat(phones.back(idas)).isPresent();
    }

    @Test
    void anotherRoleOrNoAccessEndsIt() {
        String shown = kept(bo);
        new ChangeRole(people.session(ida.person())).of("Bo", Role.READER);
        assertThat(phones.back(shown)).isEmpty();
        String again = kept(bo);
        new Deactivate(people.session(ida.person())).person("Bo");
        assertThat(phones.back(again)).isEmpty();
    }

    /** Neither the phones nor the PIN of an erased name are in the files. */
    @Test
    void erasingTakesPhonesAndPinAway() throws IOException {
        String shown = kept(bo);
        new SetPin(people.session(bo.person()), people.passwords, people.slowDown)
                .set(MadePeople.OTHER, "2468", MadePeople.ADDRESS);
        String pin = people.folder.read(
                stores -> stores.phones().pin(bo.id()).orElseThrow().hash());
        String sum = PhoneToken.read(shown).orElseThrow().hash();
        people.close();
        assertThat(isInFiles(sum) && isInFiles(pin)).isTrue();
        new Erase(people.session(ida.person())).person("Bo");
        people.close();
        assertThat(isInFiles(sum)).isFalse();
        assertThat(isInFiles(pin)).isFalse();
        assertThat(phones.back(shown)).isEmpty();
        assertThat(people.folder.upkeep().check().damages()).isEmpty();
    }

    private boolean isInFiles(String text) throws IOException {
        return Files.readString(files.resolve("cupwright.db"), StandardCharsets.ISO_8859_1)
                .contains(text);
    }

    @Test
    void aSuperintendentEndsOneOrAllOfThem() {
        String first = kept(bo);
        String second = kept(bo);
        String third = phones.share(people.session(ida.person()), Optional.empty())
                .shows()
                .orElseThrow();
        assertThat(ofAll().list())
                .extracting(PhonesOfAll.One::name)
                .containsExactly(Optional.of("Bo"), Optional.of("Bo"), Optional.empty());
        ofAll().end(ofAll().list().get(0).id());
        assertThat(phones.back(first)).isEmpty();
        assertThat(phones.back(second)).isPresent();
        ofAll().endAll();
        assertThat(phones.back(third)).isEmpty();
        assertThat(people.done()).endsWith(AuditKind.PHONE_ENDED, AuditKind.PHONE_ENDED, AuditKind.SHARED_PHONE_ENDED);
        assertThatThrownBy(() -> new PhonesOfAll(people.session(bo.person())).endAll())
                .isInstanceOf(Problem.class);
    }

    @Test
    void whoeverSignsOutIsForgottenThere() {
        String shown = kept(bo);
        phones.left(phones.known(shown).orElseThrow().id());
        assertThat(phones.back(shown)).isEmpty();
        assertThat(people.done()).endsWith(AuditKind.PHONE_ENDED);
    }

    /** A phone that somebody else signs in on is that one's alone. */
    @Test
    void anotherPersonOnThePhoneTakesItsPlace() {
        String bos = kept(bo);
        phones.keep(ida, phones.known(bos).map(phone -> phone.id()));
        assertThat(phones.back(bos)).isEmpty();
        assertThat(ofAll().list()).extracting(PhonesOfAll.One::name).containsExactly(Optional.of("Ida"));
    }

    @Test
    void noSecretIsShownOrKept() throws IOException {
        String shown = kept(bo);
        PhoneToken token = PhoneToken.read(shown).orElseThrow();
        assertThat(token.toString()).doesNotContain(token.secret());
        assertThat(people.folder.read(stores -> stores.phones().all()).toString())
                .doesNotContain(token.hash());
        people.close();
        assertThat(isInFiles(token.secret())).isFalse();
    }
}
