package org.cupwright.app.office.log;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.texts.Texts;

/**
 * What somebody is going to write down.
 *
 * @param form the kind of entry
 * @param doing one of the commonest; empty for any other kind
 */
record Chosen(EntryForm form, Optional<Doing> doing) {
    /** By its name in an address: a doing's, or a kind's; the commonest where nothing is named. */
    static Chosen of(String address) {
        if (address.isBlank()) {
            return of(Doing.values()[0]);
        }
        return Arrays.stream(Doing.values())
                .filter(doing -> doing.address().equals(address))
                .findFirst()
                .map(Chosen::of)
                .orElseGet(() -> new Chosen(EntryForm.of(address), Optional.empty()));
    }

    private static Chosen of(Doing doing) {
        return new Chosen(EntryForm.ofKind(doing.kind()), Optional.of(doing));
    }

    boolean asPlanned() {
        return doing.filter(Doing::isAsPlanned).isPresent();
    }

    /** Parts that are said already, as they are typed. */
    Map<String, String> says() {
        return doing.map(Doing::says).orElse(Map.of());
    }

    String address() {
        return doing.map(Doing::address).orElseGet(() -> LogProblems.typed(form.kind()));
    }

    String words(Texts texts) {
        return doing.map(one -> texts.say("log.page.do." + one.key()))
                .orElseGet(() -> texts.say("log.kind." + form.kind()));
    }
}
