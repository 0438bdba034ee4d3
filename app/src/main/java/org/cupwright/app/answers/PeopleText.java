package org.cupwright.app.answers;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.cupwright.app.people.Account;
import org.cupwright.app.people.Erase.Erased;
import org.cupwright.app.people.ListPeople.Everybody;
import org.cupwright.app.people.ListPeople.Invited;
import org.cupwright.app.people.NewCode;
import org.cupwright.app.people.PhonesOfAll;
import org.cupwright.app.people.RoleWord;
import org.cupwright.app.session.Role;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Moment;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;

/**
 * Who may sign in, in words.
 *
 * @param zone by whose clock moments are told
 */
public record PeopleText(Texts texts, ZoneId zone, Lines lines) {
    public PeopleText(Texts texts, ZoneId zone) {
        this(texts, zone, new Lines(texts));
    }

    public Lines list(Everybody all) {
        if (all.people().isEmpty()) {
            lines.say("people.nobody");
        }
        all.people().forEach(account -> lines.line(row(account)));
        all.invited().forEach(invited -> lines.line(row(invited)));
        return lines;
    }

    /** Somebody who has, or had, an account. */
    public String row(Account account) {
        String key = account.active() ? "people.row" : "people.rowLeft";
        return said(key, new Name(account.name()), role(account.role()), moment(account.madeAt()));
    }

    /** A code that still counts. */
    public String row(Invited invited) {
        return invited.name()
                .map(name -> said("people.rowInvited", new Name(name), role(invited.role()), moment(invited.until())))
                .orElseGet(() -> said("people.rowFirst", moment(invited.until())));
    }

    /** A phone on which somebody stays signed in, or that several share. */
    public String row(PhonesOfAll.One phone) {
        String key = phone.name().isPresent() ? "people.rowPhone" : "people.rowShared";
        return said(
                key,
                new Name(phone.name().orElse("")),
                moment(phone.madeAt()),
                moment(phone.seenAt()),
                moment(phone.until()));
    }

    /** For whom a code is, and what to do with it; the code itself is not among it. */
    public List<String> handOn(NewCode made) {
        return List.of(invitedSays(made), texts.say("people.invitedHandOn"));
    }

    private String invitedSays(NewCode made) {
        return said("people.invited", new Name(made.name().orElse("")), role(made.role()), moment(made.until()));
    }

    /** The one time that the code is said. */
    public Lines invited(NewCode made) {
        lines.line(invitedSays(made));
        lines.wrapped("    ", made.code());
        return lines.say("people.invitedHandOn");
    }

    public Lines role(Account account) {
        return lines.line(said("people.roleNow", new Name(account.name()), role(account.role())));
    }

    public Lines removed(Account account) {
        return lines.say("people.removed", account.name());
    }

    public Lines erased(Erased erased) {
        lines.say("people.erased", erased.account().name(), erased.rows());
        return lines.say("people.erasedBackups");
    }

    private String said(String key, Message.Argument... about) {
        return texts.say(new Message(key, List.of(about)));
    }

    private static Translated role(Role role) {
        return new Translated(RoleWord.key(role));
    }

    private Moment moment(Instant at) {
        return new Moment(at, zone);
    }
}
