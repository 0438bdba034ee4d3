package org.cupwright.app.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.cupwright.app.people.SignIn.Refused;
import org.cupwright.app.people.SignIn.Welcome;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangesOfPeopleTest {
    @TempDir
    Path files;

    private MadePeople people;
    private Account ida;
    private Session session;

    @BeforeEach
    void open() {
        people = new MadePeople(files);
        ida = people.ida();
        session = people.session(ida.person());
    }

    @AfterEach
    void close() {
        people.close();
    }

    private Account joined(String name, Role role) {
        String code = new Invite(session, people.random).person(name, role).code();
        return people.taking().take(code, name, MadePeople.OTHER);
    }

    @Test
    void whoeverIsInvitedComesAsWhatWasSaid() {
        NewCode made = new Invite(session, people.random).person("Bo", Role.CHANGER);
        assertThat(new ListPeople(session).all().invited())
                .containsExactly(new ListPeople.Invited(Optional.of("Bo"), Role.CHANGER, made.until()));
        CodesTest.refused("codeOfAnother", () -> people.taking().take(made.code(), "Kim", MadePeople.OTHER));
        Account bo = people.taking().take(made.code(), "BO", MadePeople.OTHER);
        assertThat(bo.name()).isEqualTo("Bo");
        assertThat(bo.role()).isEqualTo(Role.CHANGER);
        assertThat(new ListPeople(session).all().people()).containsExactly(ida, bo);
        assertThat(new ListPeople(session).all().invited()).isEmpty();
        AuditLine invited = people.audit().get(2);
        assertThat(invited.what()).isEqualTo(AuditKind.PERSON_INVITED);
        assertThat(invited.by()).isEqualTo(new AuditLine.Who(Optional.of(ida.id()), "Ida"));
        assertThat(invited.about().thing()).isEqualTo(new Name("Bo"));
        assertThat(invited.after()).contains(new Translated("people.role.changer"));
    }

    @Test
    void aForgottenPasswordIsReplacedByACode() {
        joined("Bo", Role.CHANGER);
        CodesTest.refused("otherRole", () -> new Invite(session, people.random).person("bo", Role.SUPERINTENDENT));
        String code =
                new Invite(session, people.random).person("bo", Role.CHANGER).code();
        people.clock.advance(Duration.ofMinutes(1));
        Account bo = people.taking().take(code, "Bo", "yet another invented one");
        assertThat(bo.role()).isEqualTo(Role.CHANGER);
        assertThat(people.signIn().as("Bo", MadePeople.OTHER, "")).isEqualTo(new Refused());
        assertThat(people.signIn().as("Bo", "yet another invented one", "")).isEqualTo(new Welcome(bo));
    }

    @Test
    void aRoleIsChangedAndWrittenDown() {
        Account bo = joined("Bo", Role.READER);
        people.clock.advance(Duration.ofMinutes(1));
        Account changed = new ChangeRole(session).of("bo", Role.OFFICIAL);
        assertThat(changed.role()).isEqualTo(Role.OFFICIAL);
        assertThat(people.signIn().still(bo.id(), bo.changedAt())).isEmpty();
        AuditLine line = people.audit().get(people.audit().size() - 1);
        assertThat(line.what()).isEqualTo(AuditKind.ROLE_CHANGED);
        assertThat(line.about().person()).contains(bo.id());
        assertThat(line.before()).contains(new Translated("people.role.reader"));
        assertThat(line.after()).contains(new Translated("people.role.official"));
        int lines = people.audit().size();
        new ChangeRole(session).of("Bo", Role.OFFICIAL);
        assertThat(people.audit()).hasSize(lines);
        CodesTest.refused("unknown", () -> new ChangeRole(session).of("Kim", Role.READER));
    }

    @Test
    void whoeverIsRemovedSignsInNoMoreAndMayComeBack() {
        Account bo = joined("Bo", Role.CHANGER);
        String open =
                new Invite(session, people.random).person("Bo", Role.CHANGER).code();
        assertThat(new Deactivate(session).person("Bo").active()).isFalse();
        assertThat(people.signIn().as("Bo", MadePeople.OTHER, "")).isEqualTo(new Refused());
        CodesTest.refused("code", () -> people.taking().take(open, "Bo", MadePeople.OTHER));
        String code =
                new Invite(session, people.random).person("Bo", Role.READER).code();
        Account back = people.taking().take(code, "Bo", MadePeople.OTHER);
        assertThat(back.id()).isEqualTo(bo.id());
        assertThat(back.role()).isEqualTo(Role.READER);
    }

    @Test
    void theLastSuperintendentStays() {
        List<ThrowingCallable> ways = List.of(
                () -> new Deactivate(session).person("Ida"),
                () -> new Erase(session).person("Ida"),
                () -> new ChangeRole(session).of("Ida", Role.READER));
        ways.forEach(way -> CodesTest.refused("lastSuperintendent", way));
        Account bo = joined("Bo", Role.SUPERINTENDENT);
        new ChangeRole(people.session(bo.person())).of("Ida", Role.READER);
        CodesTest.refused("lastSuperintendent", () -> new Deactivate(people.session(bo.person())).person("Bo"));
    }

    /** Nothing of it is done, nor told, without the right; a right that was taken away meanwhile is none. */
    @Test
    void onlyASuperintendentMay() {
        for (Role role : List.of(Role.OFFICIAL, Role.CHANGER, Role.READER)) {
            Session other = people.session(new Person("Kim", role));
            List<ThrowingCallable> ways = List.of(
                    () -> new Invite(other, people.random).person("Bo", Role.READER),
                    () -> new ChangeRole(other).of("Ida", Role.READER),
                    () -> new Deactivate(other).person("Ida"),
                    () -> new Erase(other).person("Ida"),
                    () -> new ListPeople(other).all(),
                    () -> new ListAudit(other).between(Optional.empty(), Optional.empty()));
            ways.forEach(way -> assertThatThrownBy(way)
                    .isInstanceOfSatisfying(
                            Problem.class,
                            problem -> assertThat(problem.what().key()).isEqualTo("problem.notAllowed")));
        }
        Account bo = joined("Bo", Role.SUPERINTENDENT);
        Session before = people.session(bo.person());
        new ChangeRole(session).of("Bo", Role.READER);
        CodesTest.refused("notAnyMore", () -> new Deactivate(before).person("Ida"));
    }

    @Test
    void apasswordIsChangedByTheOldOne() {
        people.clock.advance(Duration.ofMinutes(1));
        ChangePassword change = new ChangePassword(session, people.passwords, people.slowDown);
        CodesTest.refused("oldPassword", () -> change.change("a wrong password", MadePeople.OTHER, "a"));
        CodesTest.refused("passwordShort", () -> change.change(MadePeople.PASSWORD, "short", "a"));
        Account after = change.change(MadePeople.PASSWORD, MadePeople.OTHER, "a");
        assertThat(people.signIn().still(ida.id(), ida.changedAt())).isEmpty();
        assertThat(people.signIn().as("Ida", MadePeople.OTHER, "a")).isEqualTo(new Welcome(after));
        for (int i = 0; i < 5; i++) {
            CodesTest.refused("oldPassword", () -> change.change("a wrong password", "invented password", "a"));
        }
        CodesTest.refused("wait", () -> change.change(MadePeople.OTHER, "invented password", "a"));
        Session atTheMachine = people.session(new Person("made user", Role.SUPERINTENDENT));
        CodesTest.refused(
                "noAccount",
                () -> new ChangePassword(atTheMachine, people.passwords, people.slowDown)
                        .change(MadePeople.OTHER, "invented password", "a"));
    }

    @Test
    void theAuditIsOfDays() {
        ListAudit audit = new ListAudit(session);
        people.clock.advance(Duration.ofDays(1));
        new Invite(session, people.random).person("Bo", Role.READER);
        assertThat(audit.between(Optional.empty(), Optional.empty()).lines()).hasSize(3);
        assertThat(audit.between(Optional.of(MadePeople.day().plusDays(1)), Optional.empty())
                        .lines())
                .extracting(AuditLine::what)
                .containsExactly(AuditKind.PERSON_INVITED);
        assertThat(audit.between(Optional.empty(), Optional.of(MadePeople.day()))
                        .lines())
                .hasSize(2);
    }

    /** Passwords and codes are in nothing that is kept, told or refused. */
    @Test
    void noSecretIsKeptOrTold() throws java.io.IOException {
        NewCode made = new Invite(session, people.random).person("Bo", Role.CHANGER);
        people.taking().take(made.code(), "Bo", MadePeople.OTHER);
        String bare = made.code().replace("-", "");
        people.close();
        try (var all = java.nio.file.Files.list(files)) {
            for (Path file : all.filter(java.nio.file.Files::isRegularFile).toList()) {
                String bytes = java.nio.file.Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1);
                assertThat(bytes).doesNotContain(MadePeople.OTHER, MadePeople.PASSWORD, made.code(), bare);
            }
        }
        for (ThrowingCallable refused : List.<ThrowingCallable>of(
                () -> people.taking().take(made.code(), "Kim", "a secret password"),
                () -> people.taking().take("not a code", "Kim", "a secret password"),
                () -> PasswordRule.check("secret", "Kim"))) {
            assertThatThrownBy(refused)
                    .isInstanceOfSatisfying(
                            Problem.class,
                            problem -> assertThat(problem.getMessage()
                                            + problem.what()
                                            + problem.where()
                                            + problem.value()
                                            + problem.tryThis())
                                    .doesNotContain("secret", made.code(), bare, "not a code"));
        }
    }
}
