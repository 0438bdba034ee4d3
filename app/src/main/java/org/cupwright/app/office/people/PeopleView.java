package org.cupwright.app.office.people;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.answers.AuditText;
import org.cupwright.app.answers.PeopleText;
import org.cupwright.app.people.Account;
import org.cupwright.app.people.ListAudit;
import org.cupwright.app.people.ListPeople;
import org.cupwright.app.people.ListPeople.Everybody;
import org.cupwright.app.people.NewCode;
import org.cupwright.app.people.PhonesOfAll;
import org.cupwright.app.people.RoleWord;
import org.cupwright.app.session.Role;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;

/** The people in the words and the order of their page. */
record PeopleView(Visit visit) {
    /** What was done is shown of so many days; the command has all of it. Our choice. */
    private static final int DAYS = 30;

    /**
     * The page.
     *
     * @param code a code that was just made; empty where none was
     * @param codeSays for whom it is, and until when
     * @param active who may come in
     * @param others who left, and codes that still count, a sentence each
     * @param roles what one can be
     * @param phones that are signed in, or that several share
     * @param done what was done in the last days, the newest first
     */
    record People(
            String code,
            List<String> codeSays,
            List<One> active,
            List<String> others,
            List<Choice> roles,
            List<Phone> phones,
            List<String> done) {}

    /** Somebody with an account. */
    record One(String name, String role, String says) {}

    /** A phone that the office knows again. */
    record Phone(UUID id, String says) {}

    /** A role to choose. */
    record Choice(String value, String says) {}

    People of(Optional<NewCode> made) {
        Texts texts = visit.texts();
        ListAudit.Trail trail =
                new ListAudit(visit.session()).between(Optional.of(today().minusDays(DAYS)), Optional.empty());
        Everybody all = new ListPeople(visit.session()).all();
        ZoneId zone = trail.zone();
        List<String> done = new ArrayList<>(new AuditText(texts).said(trail));
        Collections.reverse(done);
        return new People(
                made.map(NewCode::code).orElse(""),
                made.map(code -> new PeopleText(texts, zone).handOn(code)).orElse(List.of()),
                all.people().stream()
                        .filter(Account::active)
                        .map(one -> one(one, zone))
                        .toList(),
                others(all, zone),
                Stream.of(Role.values())
                        .map(role -> new Choice(role.name(), texts.say(RoleWord.key(role))))
                        .toList(),
                new PhonesOfAll(visit.session())
                        .list().stream()
                                .map(phone -> new Phone(phone.id(), new PeopleText(texts, zone).row(phone)))
                                .toList(),
                done);
    }

    /** By the machine's own clock: the trail is of no course's day. */
    private LocalDate today() {
        return LocalDate.ofInstant(visit.session().now(), ZoneId.of("UTC"));
    }

    private One one(Account account, ZoneId zone) {
        return new One(account.name(), account.role().name(), new PeopleText(visit.texts(), zone).row(account));
    }

    private List<String> others(Everybody all, ZoneId zone) {
        PeopleText text = new PeopleText(visit.texts(), zone);
        Stream<String> left = all.people().stream().filter(one -> !one.active()).map(text::row);
        return Stream.concat(left, all.invited().stream().map(text::row)).toList();
    }
}
