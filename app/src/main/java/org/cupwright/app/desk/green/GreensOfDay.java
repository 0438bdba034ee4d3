package org.cupwright.app.desk.green;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.items.GroundFile;
import org.cupwright.formats.items.GroundItems;
import org.cupwright.green.GroundOnDay;
import org.cupwright.rotation.AreaCycle;
import org.cupwright.rotation.candidate.Area;
import org.cupwright.turf.state.HolesOnGreen;
import org.cupwright.turf.state.RoughHole;
import org.cupwright.turf.today.TurfDay;

/**
 * Greens of a course on one day, read from the folder; judging them is left for when the folder is free again.
 *
 * @param day the day
 * @param open the greens in round order
 * @param before what the day finds
 * @param drawn all that is drawn on the course's greens
 * @param known how far what is known of their ground has come
 */
public record GreensOfDay(CourseDay day, List<Open> open, DayGround before, DrawnOnCourse drawn, GroundKnown known) {
    /** One green, not judged yet. */
    public record Open(MeasuredGreen green, GroundOnDay ground) {}

    public static GreensOfDay read(Stores stores, CourseDay day, DayQuestion question) {
        return read(stores, day, question, day.course().holes());
    }

    /** The same of some holes' greens alone. */
    public static GreensOfDay read(Stores stores, CourseDay day, DayQuestion question, List<Hole> holes) {
        DayGround before = DayGround.of(stores, day);
        GroundItems items = onGreens(question.ground(), day.course());
        List<Open> greens = new ArrayList<>();
        GroundKnown known = GroundKnown.of(stores, day);
        for (MeasuredGreen green : known.greens(stores, holes)) {
            greens.add(new Open(green, before.on(green.hole(), items)));
        }
        return new GreensOfDay(
                day, greens, before, stores.drawn().of(day.course().id()), known);
    }

    /** What a file says of the greens. Every item must be understood: a closed patch passed over would be cut into. */
    public static GroundItems onGreens(Optional<SourceFile> file, Course course) {
        if (file.isEmpty()) {
            return new GroundItems(Map.of(), List.of());
        }
        GroundItems items = FileReading.read(file.get(), in -> GroundFile.read(in, course));
        if (!items.findings().isEmpty()) {
            throw FileReading.problem(items.findings().get(0), file.get().name());
        }
        return items;
    }

    /** The greens' judgings by hole. They are judged side by side: each takes up to a second or two. */
    public Map<String, Judging> judge(ResultCache cache, Progress progress) {
        GreenMeasuring measuring = new GreenMeasuring(cache, day);
        List<Judging> judgings = progress.sideBySide(
                "greens",
                open,
                green -> known.judged(
                        cache, green, day, () -> Judging.of(measuring.of(green.green()), day, green.ground())));
        Map<String, Judging> judged = new HashMap<>();
        for (int i = 0; i < open.size(); i++) {
            judged.put(open.get(i).green().hole().id(), judgings.get(i));
        }
        return judged;
    }

    /** The areas in one of which a hole is to be on a day; none where it may be anywhere. */
    public List<Area> areas(String hole, LocalDate date) {
        return new AreaCycle(day.policy(), hole, drawn.areas(hole)).areas(date);
    }

    private List<AreaOnDay> numbered(String hole) {
        List<Area> today = areas(hole, day.date());
        return drawn.areas(hole).stream()
                .map(area -> new AreaOnDay(area, today.contains(area)))
                .toList();
    }

    /** What lies on a hole's green on the day, before its change. */
    public GroundOnDay ground(String hole) {
        return open.stream()
                .filter(green -> green.green().hole().id().equals(hole))
                .map(Open::ground)
                .findFirst()
                .orElseThrow();
    }

    /** What the logbook says of the turf on the day. */
    public TurfDay turf() {
        return before.turf();
    }

    /** Whether a hole is played to a temporary green. */
    public boolean temporaryGreen(String hole) {
        return before.temporaryGreen(hole);
    }

    /** Where a hole is before the day's change. */
    public Optional<MapPoint> last(String hole) {
        return before.last(hole);
    }

    /** Where a hole is before the day's change, where only the part of the green is known. */
    public Optional<RoughHole> roughly(String hole) {
        return before.roughly(hole);
    }

    /** The same greens with nothing lying on them, judged at another speed and in other weather. */
    public GreensOfDay cleared(CourseDay other) {
        GroundOnDay clear = GroundOnDay.clear(other.date());
        return new GreensOfDay(
                other,
                open.stream().map(green -> new Open(green.green(), clear)).toList(),
                before,
                drawn,
                known);
    }

    /** What will lie on a green on a coming day besides its old holes, if nothing was cut until then. */
    public GroundOnDay withoutHoles(Hole hole, LocalDate date) {
        return before.withoutHoles(hole, date);
    }

    /** The holes of a green until now. */
    public HolesOnGreen holes(String hole) {
        return before.holes(hole);
    }

    /** The greens as they were judged, in round order. */
    public List<GreenOnDay> onDay(Map<String, Judging> judged) {
        return open.stream()
                .map(green -> {
                    String hole = green.green().hole().id();
                    return new GreenOnDay(
                            judged.get(hole).green(), green.ground(), last(hole), roughly(hole), numbered(hole));
                })
                .toList();
    }
}
