package org.cupwright.app.desk.resurvey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.course.Hole;
import org.cupwright.green.LevelReading;
import org.cupwright.green.resurvey.Resurvey;
import org.cupwright.green.surveyed.SurveyTooThin;

/** Compares a green's newest survey with an earlier one. */
public record CompareSurveys(Session session) {
    /** Why a green was not compared. */
    public enum Why {
        NO_SURVEY,
        ONE_SURVEY,
        NONE_SO_EARLY,
        TOO_THIN
    }

    /** A green that was not compared. */
    public record NotCompared(Hole hole, Why why) {}

    /**
     * What changed.
     *
     * @param day the day by whose fastest speed ground is judged
     * @param greens those that were compared, in round order
     * @param notCompared the others
     */
    public record Answer(CourseDay day, List<GreenChange> greens, List<NotCompared> notCompared) {
        public Answer {
            greens = List.copyOf(greens);
            notCompared = List.copyOf(notCompared);
        }
    }

    private record Pair(
            MeasuredGreen now, GreenSurvey survey, SurveyVersion before, SurveyVersion after, List<Integer> older) {}

    private record Read(CourseDay day, List<Pair> pairs, List<NotCompared> not) {}

    /**
     * Compares.
     *
     * @param holes the holes; none, or "all": every hole
     * @param since which earlier survey
     */
    public Answer of(DayQuestion question, List<String> holes, Since since, Progress progress) {
        Read read = session.read(stores -> read(stores, question, holes, since));
        List<Optional<GreenChange>> changes =
                progress.sideBySide("greens", read.pairs(), pair -> compared(pair, read.day()));
        List<NotCompared> not = new ArrayList<>(read.not());
        for (int i = 0; i < changes.size(); i++) {
            if (changes.get(i).isEmpty()) {
                not.add(new NotCompared(read.pairs().get(i).now().hole(), Why.TOO_THIN));
            }
        }
        return new Answer(read.day(), changes.stream().flatMap(Optional::stream).toList(), not);
    }

    private Read read(Stores stores, DayQuestion question, List<String> holes, Since since) {
        CourseDay day = CourseDay.of(stores, question, session);
        List<Pair> pairs = new ArrayList<>();
        List<NotCompared> not = new ArrayList<>();
        for (Hole hole : HoleChoice.holes(day.course(), holes)) {
            List<SurveyVersion> versions =
                    stores.surveys().versions(day.course().id(), hole.id());
            if (versions.size() < 2) {
                not.add(new NotCompared(hole, versions.isEmpty() ? Why.NO_SURVEY : Why.ONE_SURVEY));
                continue;
            }
            SurveyVersion newest = versions.get(versions.size() - 1);
            Optional<SurveyVersion> before = since.of(
                    versions.subList(0, versions.size() - 1),
                    day.course().frame().zone());
            before.ifPresentOrElse(
                    earlier -> pairs.add(pair(stores, day, hole, earlier, newest)),
                    () -> not.add(new NotCompared(hole, Why.NONE_SO_EARLY)));
        }
        if (pairs.isEmpty()) {
            since.refuseWhenNowhere();
        }
        return new Read(day, pairs, not);
    }

    private static Pair pair(Stores stores, CourseDay day, Hole hole, SurveyVersion before, SurveyVersion newest) {
        String course = day.course().id();
        MeasuredGreen now = MeasuredGreen.of(stores, course, hole);
        LevelSpots then = stores.surveys().levelsBefore(course, newest.recordedAt());
        GreenSurvey earlier = stores.surveys().find(course, hole.id(), before).orElseThrow();
        return new Pair(now, earlier, before, newest, older(now.readings(), then.of(hole.id())));
    }

    /** The numbers, the first being 1, of readings that were there then. */
    private static List<Integer> older(List<LevelReading> readings, List<LevelReading> then) {
        return IntStream.range(0, readings.size())
                .filter(i -> then.contains(readings.get(i)))
                .mapToObj(i -> i + 1)
                .toList();
    }

    /** Empty when one of the surveys is too thin to fit. */
    private static Optional<GreenChange> compared(Pair pair, CourseDay day) {
        MeasuredGreen now = pair.now();
        MeasuredGreen before = now.withSurvey(pair.survey());
        try {
            Resurvey report = Resurvey.between(
                    now.hole().green(),
                    before.withReadings(List.of()).fitted(day.policy()),
                    now.withReadings(List.of()).fitted(day.policy()));
            GoodGround good = GoodGround.between(before.green(day.policy()), now.green(day.policy()), day);
            return Optional.of(new GreenChange(now.hole(), pair.before(), pair.after(), report, good, pair.older()));
        } catch (SurveyTooThin tooThin) {
            return Optional.empty();
        }
    }
}
