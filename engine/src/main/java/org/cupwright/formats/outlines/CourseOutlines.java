package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.Loop;
import org.cupwright.course.Tee;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.FrameForMeasuring;
import org.cupwright.formats.Projection;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Makes a course of the features of a map file: golf=green areas with the golf=hole lines that end on them, the bunkers
 * and water near them, and the tees at their lines' starts.
 */
public final class CourseOutlines {
    private final OutlineRequest request;
    private final List<Finding> findings = new ArrayList<>();

    private CourseOutlines(OutlineRequest request) {
        this.request = request;
    }

    /** Features without which a course cannot be read: its greens and lines of play. */
    public static boolean essential(Map<String, String> tags) {
        return "green".equals(tags.get("golf")) || "hole".equals(tags.get("golf"));
    }

    /**
     * Makes the course.
     *
     * @param map the features of an outlines file
     * @param request what the person says beside it
     * @return the course with at least one hole
     * @throws UnreadableFile if there is no green in it, or a green's outline crosses itself
     */
    public static ReadCourse read(MapFeatures map, OutlineRequest request) {
        return new CourseOutlines(request).read(map);
    }

    private ReadCourse read(MapFeatures map) {
        findings.addAll(map.findings());
        List<MapFeature> greenFeatures = greens(map);
        CoordinateFrame frame = frame(map.frame(), greenFeatures);
        Projection toCourse = Projection.between(map.frame(), frame);
        List<GreenShape> greens = GreenShapes.of(greenFeatures, toCourse, findings);
        if (greens.isEmpty()) {
            throw noGreens(map);
        }
        List<HoleLine> lines = map.features().stream()
                .filter(feature -> feature.is("golf", "hole"))
                .flatMap(feature -> HoleLine.of(feature, toCourse, findings).stream())
                .toList();
        List<HoleDraft> drafts = LinesToGreens.match(greens, lines, findings);
        List<String> names = HoleNames.of(drafts, findings);
        List<Hole> holes = holes(drafts, names, new Surroundings(map.features(), toCourse, findings));
        CourseFrame courseFrame = new CourseFrame(frame.epsg(), request.zone());
        Course course = new Course(request.courseId(), name(map), courseFrame, holes, loops(drafts, names));
        return new ReadCourse(course, findings);
    }

    /** The survey's own frame where it is fit for measuring, else the UTM zone of the greens. */
    private CoordinateFrame frame(CoordinateFrame ofOutlines, List<MapFeature> greens) {
        Optional<CoordinateFrame> asked = request.frame();
        Envelope all = new Envelope();
        greens.forEach(green -> all.expandToInclude(green.shape().getEnvelopeInternal()));
        Coordinate middle = all.centre();
        CoordinateFrame degrees = CoordinateFrame.of(CoordinateFrame.WGS84);
        Coordinate place = Projection.between(ofOutlines, degrees).apply(middle.x, middle.y);
        CoordinateFrame utm = CoordinateFrame.utmOf(place.x, place.y);
        if (asked.isEmpty() || FrameForMeasuring.fits(asked.get(), place.x, place.y)) {
            return asked.orElse(utm);
        }
        findings.add(Finding.of(
                        FindingKind.FRAME_NOT_FOR_MEASURING,
                        Where.file(),
                        asked.get().toString())
                .trying(utm.toString()));
        return utm;
    }

    private List<MapFeature> greens(MapFeatures map) {
        List<MapFeature> tagged = map.features().stream()
                .filter(feature -> feature.is("golf", "green"))
                .toList();
        boolean anyGolf =
                map.features().stream().anyMatch(feature -> feature.tag("golf").isPresent());
        List<MapFeature> areas = map.features().stream()
                .filter(feature -> feature.shape().getDimension() == 2
                        && feature.tag("leisure").isEmpty())
                .toList();
        if (!anyGolf && !areas.isEmpty()) {
            findings.add(Finding.of(FindingKind.GREENS_NOT_TAGGED, Where.file(), areas.size()));
            return areas;
        }
        if (tagged.isEmpty()) {
            throw noGreens(map);
        }
        return tagged;
    }

    private static UnreadableFile noGreens(MapFeatures map) {
        return Finding.of(FindingKind.NO_GREENS, Where.file(), map.features().size())
                .failure();
    }

    private List<Hole> holes(List<HoleDraft> drafts, List<String> names, Surroundings surroundings) {
        List<Hole> holes = new ArrayList<>();
        List<String> practice = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            HoleDraft draft = drafts.get(i);
            holes.add(hole(names.get(i), draft, surroundings, surroundings.teesOf(draft, drafts)));
            if (draft.green().practice()) {
                practice.add(names.get(i));
            }
        }
        tellUnknownDirections(drafts, names);
        holes.sort(Comparator.comparing((Hole hole) -> practice.contains(hole.id()))
                .thenComparing(Hole::id, RoundOrder.byName()));
        return holes;
    }

    /** What the map names of the course's parts, in round order, and its practice greens. */
    private static List<Loop> loops(List<HoleDraft> drafts, List<String> names) {
        Map<String, List<String>> named = new LinkedHashMap<>();
        Map<GreenShape, List<String>> practice = new LinkedHashMap<>();
        IntStream.range(0, drafts.size())
                .boxed()
                .sorted(Comparator.comparing(names::get, RoundOrder.byName()))
                .forEach(i -> {
                    HoleDraft draft = drafts.get(i);
                    draft.loop()
                            .ifPresent(loop -> named.computeIfAbsent(loop, key -> new ArrayList<>())
                                    .add(names.get(i)));
                    if (draft.green().practice()) {
                        practice.computeIfAbsent(draft.green(), key -> new ArrayList<>())
                                .add(names.get(i));
                    }
                });
        List<Loop> loops = new ArrayList<>();
        named.forEach((name, holes) -> loops.add(new Loop(name, holes, false)));
        practice.forEach((green, holes) -> loops.add(new Loop(green.loop().orElse(""), holes, true)));
        return loops;
    }

    private Hole hole(String id, HoleDraft draft, Surroundings surroundings, List<Tee> tees) {
        Optional<HoleLine> line = draft.line();
        return new Hole(
                id,
                draft.green().outline(),
                lineOfPlay(id, draft),
                line.map(HoleLine::par).orElseGet(OptionalInt::empty),
                line.map(HoleLine::distMetres).orElseGet(OptionalDouble::empty),
                surroundings.hazardsNear(draft.green().outline().polygon()),
                tees,
                List.of(),
                List.of());
    }

    private Optional<LineOfPlay> lineOfPlay(String id, HoleDraft draft) {
        GreenShape green = draft.green();
        Optional<LineOfPlay> given = Optional.ofNullable(request.towards().get(id))
                .or(() -> Optional.of(green)
                        .filter(GreenShape::practice)
                        .map(GreenShape::practiceName)
                        .map(request.towards()::get))
                .map(heading -> LineOfPlay.towards(draft.green().outline(), heading));
        Optional<LineOfPlay> line = given.or(() -> draft.line().map(HoleLine::line));
        boolean told = green.practice() && !id.equals(green.cupName(1)); // for all its holes at once
        if (line.isEmpty() && !told) {
            String named = green.practice() ? green.practiceName() : id;
            findings.add(Finding.of(FindingKind.NO_LINE_OF_PLAY, Where.hole(named), named)
                    .at(green.outline().centroid())
                    .trying(named));
        }
        return line;
    }

    private void tellUnknownDirections(List<HoleDraft> drafts, List<String> names) {
        List<String> practice = drafts.stream()
                .map(HoleDraft::green)
                .filter(GreenShape::practice)
                .map(GreenShape::practiceName)
                .toList();
        request.towards().keySet().stream()
                .filter(id -> !names.contains(id) && !practice.contains(id))
                .sorted()
                .forEach(id -> {
                    findings.add(Finding.of(FindingKind.HOLE_UNKNOWN, Where.hole(id), id)
                            .trying(String.join(", ", names)));
                });
    }

    private String name(MapFeatures map) {
        List<String> named = map.features().stream()
                .filter(feature -> feature.is("leisure", "golf_course"))
                .flatMap(feature -> feature.tag("name").stream())
                .distinct()
                .toList();
        return request.name().orElse(named.size() == 1 ? named.get(0) : request.courseId());
    }
}
