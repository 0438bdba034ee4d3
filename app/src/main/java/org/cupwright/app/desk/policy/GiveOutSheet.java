package org.cupwright.app.desk.policy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.SheetLink;
import org.cupwright.app.desk.policy.ChangePolicy.Wanted;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Stores;
import org.cupwright.policy.Policy;
import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.PolicyHistory;
import org.cupwright.policy.Setting;

/**
 * Gives the sheet of today out to whoever has its link, or does so no more. All of it is settings, so that the audit
 * trail has it; what is decided counts at once, whatever was set for days to come.
 */
public record GiveOutSheet(Session session) {
    private static final String YES = "yes";

    /**
     * How it is given out.
     *
     * @param path where it is within the office; empty while it is not given out
     * @param linked whether there is a link that was printed or told, also where it leads nowhere today
     * @param office under which address readers find the office; empty: nobody has said so
     */
    public record Answer(Optional<String> path, boolean linked, String office) {}

    public Answer show() {
        return session.look(Right.SET, stores -> {
            Policy policy = history(stores).at(today(stores));
            return new Answer(
                    SheetLink.path(policy),
                    !policy.get(PaperPolicy.SHEET_LINK).isEmpty(),
                    policy.get(PaperPolicy.OFFICE_ADDRESS));
        });
    }

    /** Opens it under the link it had before, or its first one. */
    public void open() {
        decide(policy -> policy.get(PaperPolicy.SHEET_LINK).isEmpty()
                ? List.of(newLink(), wanted(PaperPolicy.PUBLIC_SHEET, YES))
                : List.of(wanted(PaperPolicy.PUBLIC_SHEET, YES)));
    }

    /** Another link: the one of before leads nowhere any more. */
    public void linkAnew() {
        decide(policy -> List.of(newLink()));
    }

    public void close() {
        decide(policy -> List.of(wanted(PaperPolicy.PUBLIC_SHEET, "no")));
    }

    /**
     * Says under which address readers find the office.
     *
     * @throws org.cupwright.message.Problem if it is none
     */
    public void foundAt(String office) {
        decide(policy -> List.of(wanted(PaperPolicy.OFFICE_ADDRESS, office)));
    }

    private Wanted newLink() {
        return wanted(PaperPolicy.SHEET_LINK, SheetLink.of(session.ids().get()));
    }

    private static Wanted wanted(Setting<?> setting, String value) {
        return new Wanted(setting.key(), value);
    }

    private void decide(Function<Policy, List<Wanted>> wanted) {
        ChangePolicy change = new ChangePolicy(session, Settings.catalogue());
        session.decide(Right.SET, stores -> {
            LocalDate today = today(stores);
            PolicyHistory history = history(stores);
            for (Wanted one : wanted.apply(history.at(today))) {
                days(history, one.key(), today).forEach(day -> change.setIn(stores, day, List.of(one)));
            }
            return null;
        });
    }

    /** Today, and each later day from which on something else was to count. */
    private static List<LocalDate> days(PolicyHistory history, String key, LocalDate today) {
        Stream<LocalDate> later = history.changes().stream()
                .filter(change -> change.key().equals(key))
                .map(PolicyChange::effective)
                .filter(day -> day.isAfter(today));
        return Stream.concat(Stream.of(today), later).distinct().toList();
    }

    private PolicyHistory history(Stores stores) {
        return PolicyKeys.history(stores, session.course());
    }

    private LocalDate today(Stores stores) {
        return CourseToday.of(stores, session.course(), session.clock());
    }
}
