package org.cupwright.app.field;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.cupwright.app.desk.green.AreaOnDay;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.storage.Asked;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Green;
import org.cupwright.green.Ground;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Area;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Polygon;

/**
 * An invented green of a case that office and phone share, as it is told in a file: {@code name: value}, places as
 * {@code east,north}. After {@code judged:} there is a picture of it, a letter a spot, north above; after {@code said:}
 * what is said of some spots.
 */
record MadeCase(Map<String, String> told, List<String> judged, List<String> said) {
    static final Path FOLDER = Path.of("src/test/resources/org/cupwright/app/field/ground-cases");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 20);

    static MadeCase read(Path file) {
        try {
            List<String> lines = Files.readAllLines(file);
            int judged = lines.indexOf("judged:");
            int said = lines.indexOf("said:");
            return new MadeCase(
                    lines.subList(0, judged).stream()
                            .filter(line -> !line.startsWith("#"))
                            .map(line -> line.split(": ", 2))
                            .collect(Collectors.toMap(parts -> parts[0], parts -> parts[1])),
                    lines.subList(judged + 1, said),
                    lines.subList(said + 1, lines.size()));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private Optional<String> find(String name) {
        return Optional.ofNullable(told.get(name));
    }

    private List<String> all(String name) {
        return find(name).stream()
                .flatMap(text -> Arrays.stream(text.split("; ")))
                .toList();
    }

    private static double[] corners(String text) {
        return Arrays.stream(text.split("[ ,]"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static Polygon area(String text) {
        return Shapes.area(corners(text));
    }

    Policy policy() {
        return Policy.defaults()
                .with(
                        PlacePolicy.ON_CONVENTION,
                        find("on").map(OnConvention::valueOf).orElse(OnConvention.ALONG_CHORD));
    }

    private Hole hole() {
        Outline outline = Shapes.polygon(corners(told.get("outline")));
        return new Hole(
                "7",
                outline,
                find("play").map(degrees -> LineOfPlay.towards(outline, new Heading(Double.parseDouble(degrees)))),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                all("bunker").stream()
                        .map(text -> new Hazard(Hazard.Kind.BUNKER, area(text)))
                        .toList(),
                List.of(),
                List.of(),
                List.of());
    }

    private Ground ground() {
        return find("gentle")
                .<Ground>map(seed -> ModelGround.exact(MadeSurface.gentle(Long.parseLong(seed), 12))
                        .withSlopeError(0.001))
                .orElseGet(() -> new LevelSpotsGround(List.of(), Policy.defaults()));
    }

    private GroundOnDay onDay() {
        List<GroundItem> items = new ArrayList<>();
        for (String text : all("old")) {
            MapPoint at = new MapPoint(corners(text)[0], corners(text)[1]);
            LocalDate left = DAY.minusDays((long) corners(text)[2]);
            items.add(new GroundItem(
                    GroundItem.Kind.OLD_HOLE, at.toPoint(), Optional.of(left), Optional.of(left.plusDays(14))));
        }
        for (String text : all("saved")) {
            items.add(new GroundItem(GroundItem.Kind.SAVED, area(text), Optional.empty(), Optional.empty()));
        }
        for (String text : all("closed")) {
            items.add(new GroundItem(GroundItem.Kind.OUT_OF_USE, area(text), Optional.empty(), Optional.empty()));
        }
        return new GroundOnDay(DAY, items);
    }

    GreenJudge judge() {
        double speed = Double.parseDouble(find("speed").orElse("10.5"));
        DayConditions day = new DayConditions(new GreenSpeed(speed), told.containsKey("rain"), false, onDay());
        return new GreenJudge(new Green(hole(), ground()), day, policy());
    }

    GreenOnDay green(GreenJudge judge) {
        List<AreaOnDay> areas = all("area").stream()
                .map(text -> new AreaOnDay(new Area("3", area(text)), true))
                .toList();
        return new GreenOnDay(judge.judgeGreen(), onDay(), Optional.empty(), Optional.empty(), areas);
    }

    /** Ground that somebody asked to keep off. */
    Optional<Asked> asked() {
        return find("keptOff")
                .map(MadeCase::corners)
                .map(circle -> new Asked.Circle(new MapPoint(circle[0], circle[1]), circle[2]))
                .map(circle -> new Asked("7", "Ash", Optional.empty(), List.of(circle)));
    }

    String carried() {
        return told.get("carried");
    }
}
