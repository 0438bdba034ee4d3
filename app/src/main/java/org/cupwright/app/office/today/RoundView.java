package org.cupwright.app.office.today;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Role;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.sheets.WhoAndWhen;
import org.cupwright.app.storage.DayRound.Share;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Message.Said;
import org.cupwright.policy.EnumNames;
import org.cupwright.round.StartType;

/** The round of the day on its page: what is told of it, hole by hole, and the form that says it otherwise. */
record RoundView(Visit visit) {
    /** So many lines are left for people who have nothing yet: our choice. */
    private static final int FREE_LINES = 2;

    /**
     * What is told.
     *
     * @param says of the whole round; empty where there is nothing to tell, and then no hole has a line either
     * @param head over the lines of the holes
     * @param lines by hole: who, and by when
     * @param form empty for those who may not say it otherwise
     * @param seen its number
     */
    record Told(Optional<String> says, String head, Map<String, String> lines, Optional<Form> form, long seen) {
        public String line(String hole) {
            return lines.getOrDefault(hole, "");
        }
    }

    /**
     * The form as it is filled in.
     *
     * @param starts from which tees play may begin
     * @param first when the first groups go
     * @param frost how many minutes later
     * @param people who has which holes, and lines for others
     * @param names of whoever may be named
     */
    record Form(List<Start> starts, String first, int frost, List<Line> people, List<String> names) {}

    /** A way in which play may begin. */
    record Start(String value, String says, boolean chosen) {}

    /** What one person has. */
    record Line(String person, String holes) {}

    Told of(RoundOfDay round, DaySheet sheet) {
        Texts texts = visit.texts();
        WhoAndWhen words = WhoAndWhen.of(sheet, texts);
        Map<String, String> lines = new TreeMap<>();
        for (SheetHole hole : sheet.holes()) {
            words.line(hole).ifPresent(line -> lines.put(hole.hole(), line));
        }
        return new Told(
                Optional.of(round).filter(RoundOfDay::tells).map(told -> texts.show(new Said(told.says()))),
                texts.say(round.isShared() ? "today.round.who" : "today.round.by"),
                lines,
                visit.may(Right.PLAN) ? Optional.of(form(round)) : Optional.empty(),
                round.seen());
    }

    private Form form(RoundOfDay round) {
        List<Line> people = new ArrayList<>(
                round.shares().all().stream().map(share -> line(share, round)).toList());
        for (int i = 0; i < FREE_LINES; i++) {
            people.add(new Line("", ""));
        }
        return new Form(
                Arrays.stream(StartType.values())
                        .map(type -> start(type, round))
                        .toList(),
                round.start().firstGroups().stream().map(LocalTime::toString).collect(Collectors.joining(", ")),
                round.start().frostMinutes(),
                people,
                names());
    }

    private static Line line(Share share, RoundOfDay round) {
        return new Line(share.person(), round.told(share.holes()));
    }

    private Start start(StartType type, RoundOfDay round) {
        String says = visit.texts().say("roundOf.start." + EnumNames.lowerCamel(type));
        return new Start(type.name(), says, round.start().type() == type);
    }

    /** Whoever may write down what was cut. */
    private List<String> names() {
        return visit.session()
                .read(stores -> stores.people().all().stream()
                        .filter(KeptPerson::active)
                        .filter(person -> EnumNames.find(Role.class, person.role())
                                .filter(role -> role.may(Right.RECORD))
                                .isPresent())
                        .map(KeptPerson::name)
                        .toList());
    }
}
