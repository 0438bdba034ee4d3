package org.cupwright.app.office.green;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.cupwright.app.session.Right;
import org.cupwright.app.visit.Visit;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.cupwright.policy.EnumNames;

/** What can be said of a green's ground. */
record GroundView(Visit visit) {
    /**
     * What can be said, and by whom.
     *
     * @param mayMark whether whoever looks may close ground
     * @param mayRead whether whoever looks may say what the level read
     * @param uses how ground may be used
     * @param reasons why it may be marked
     * @param from the day from which it counts where nobody says otherwise
     */
    record Ground(boolean mayMark, boolean mayRead, List<Choice> uses, List<Choice> reasons, LocalDate from) {}

    /** A choice by its name in the logbook, in words. */
    record Choice(String key, String says) {}

    Ground ground() {
        return new Ground(
                visit.may(Right.RECORD),
                visit.may(Right.SURVEY),
                choices("use", GroundUse.values()),
                choices("reason", GroundReason.values()),
                visit.date());
    }

    private List<Choice> choices(String part, Enum<?>[] all) {
        return Arrays.stream(all)
                .map(EnumNames::lowerCamel)
                .map(key -> new Choice(key, visit.texts().say("log.choice." + part + "." + key)))
                .toList();
    }
}
