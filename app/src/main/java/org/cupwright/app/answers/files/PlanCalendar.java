package org.cupwright.app.answers.files;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.app.desk.paper.WeeksPaper;
import org.cupwright.app.desk.paper.WeeksPaper.PlanOfDay;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.formats.calendar.CalendarText;
import org.cupwright.formats.calendar.DayEvent;
import org.cupwright.formats.calendar.DayEvent.Status;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.Judgement;
import org.cupwright.policy.EnumNames;

/**
 * Plans as a calendar: one event for each of the course's days. The same plan gives the same event; a day that was
 * planned anew or published since keeps its name and has a higher sequence number, so that calendars take it for the
 * same event, changed.
 */
public record PlanCalendar(Texts texts, String version) {
    public String of(WeeksPaper paper) {
        List<DayEvent> events =
                paper.days().stream().map(day -> event(day, paper)).toList();
        return new CalendarText(
                        "-//Cupwright//Cupwright " + version + "//EN",
                        texts.say("calendar.name", paper.course().name()),
                        events)
                .text();
    }

    private DayEvent event(PlanOfDay day, WeeksPaper paper) {
        State state = day.plan().state();
        String stands = texts.say("state." + EnumNames.lowerCamel(state));
        return new DayEvent(
                id(paper.course(), day.date()),
                day.versions() - 1,
                day.keptAt(),
                day.date(),
                state == State.DRAFT ? Status.TENTATIVE : Status.CONFIRMED,
                texts.say("calendar.summary", paper.course().name(), stands),
                holes(day, new JudgementText(texts, paper.policy().get(PlacePolicy.PACE_METRES))));
    }

    private String holes(PlanOfDay day, JudgementText says) {
        return day.plan().holes().stream().map(hole -> line(hole, says)).collect(Collectors.joining("\n"));
    }

    private String line(StoredHole hole, JudgementText says) {
        Judgement judgement = hole.position().judgement();
        String verdict = hole.since()
                .map(cut -> texts.say("calendar.stays", texts.day(cut)))
                .orElseGet(() -> says.verdict(judgement));
        String line = texts.say("calendar.hole", hole.hole(), says.where(hole.position()), verdict);
        String aside = judgement.setAside().stream()
                .map(rule -> texts.say("rule." + rule.id()))
                .collect(Collectors.joining(", "));
        return aside.isEmpty() ? line : texts.say("calendar.setAside", line, aside);
    }

    /** The event's name, the same whenever it is written (RFC 7986 recommends a UUID). */
    private static String id(Course course, LocalDate day) {
        String about = "cupwright hole locations\n" + course.id() + "\n" + course.name() + "\n" + day;
        return UUID.nameUUIDFromBytes(about.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
