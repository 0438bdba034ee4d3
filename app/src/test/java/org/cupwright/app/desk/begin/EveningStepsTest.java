package org.cupwright.app.desk.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.course.Course;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Problem;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Envelope;

/** The steps of the first evening in a data folder: what each keeps, and what each refuses. */
class EveningStepsTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
    private static final double PACE = 0.914;

    @TempDir
    private Path data;

    /** Somebody who comes anew each time, as after a restart. */
    private Session session(Role role) {
        return new Session(
                new SqliteFolder(data, CLOCK),
                new Person("Ida", role),
                new CourseChoice(Optional.empty()),
                CLOCK,
                UUID::randomUUID,
                new Speech(Door.PAGES, "en", UnitSystem.PACES, PACE));
    }

    private Session ida() {
        return session(Role.SUPERINTENDENT);
    }

    private static Map<String, String> place() {
        return new HashMap<>(
                Map.of("name", "Three Birches", "zone", "Europe/Dublin", "longitude", "-27.0", "latitude", "52.0"));
    }

    private SettingUp begun() {
        new PlaceStep(ida()).keep(place());
        return new BeginCourse(ida()).stands();
    }

    private static Map<String, String> oval(String hole, String play) {
        Map<String, String> typed = new HashMap<>(Map.of(
                "hole", hole, "play", play, "unit", "metres", "length", "30", "frontEast", "", "frontNorth", ""));
        String[][] rows = {{"5", "7.45"}, {"10", "9.43"}, {"15", "10"}, {"20", "9.43"}, {"25", "7.45"}};
        for (int i = 0; i < rows.length; i++) {
            typed.put("on" + (i + 1), rows[i][0]);
            typed.put("left" + (i + 1), rows[i][1]);
            typed.put("right" + (i + 1), rows[i][1]);
        }
        return typed;
    }

    private static Set<String> wrongOf(ThrowingCallable keeping) {
        WrongFields wrong = (WrongFields) catchThrowable(keeping);
        assertThat(wrong).as("something is wrong").isNotNull();
        return wrong.byField().keySet();
    }

    @Test
    void thePlaceIsKeptWithALanguageOfItsOwn() {
        Map<String, String> typed = place();
        typed.put("desk.language", "es");
        typed.put("desk.units", "metric");
        new PlaceStep(ida()).keep(typed);
        SettingUp.Place place = new BeginCourse(ida()).stands().place();
        assertThat(place.id()).isEqualTo("three-birches");
        assertThat(place.epsg()).isEqualTo(32626);
        var history = ida().read(stores -> stores.policies().history("")).changes();
        assertThat(history)
                .extracting(change -> change.key() + "=" + change.value())
                .containsExactlyInAnyOrder("desk.language=es", "desk.units=metric");
        List<String> courses = ida().read(stores -> stores.courses().ids());
        assertThat(courses).isEmpty();
    }

    @Test
    void allThatIsWrongIsToldAtOnce_andNothingKept() {
        Map<String, String> typed =
                Map.of("name", "", "zone", "Europe/Atlantis", "longitude", "west", "latitude", "91");
        assertThat(wrongOf(() -> new PlaceStep(ida()).keep(typed)))
                .containsExactlyInAnyOrder("name", "zone", "longitude", "latitude");
        assertThat(new BeginCourse(ida()).find()).isEmpty();
        assertThatThrownBy(() -> new BeginCourse(ida()).stands()).isInstanceOf(Problem.class);
    }

    @Test
    void aPacedGreenTurnsWithItsDirection() {
        begun();
        int number = new PacedStep(ida()).keep(0, oval("7", ""), PACE);
        BegunGreen north = new BeginCourse(ida()).stands().find(number).orElseThrow();
        assertThat(north.placed()).isFalse();
        assertThat(north.hole().lineOfPlay()).isEmpty();
        new NumberStep(ida()).keep(Map.of("hole-1", "7", "play-1", "90", "out-1", ""));
        BegunGreen east = new BeginCourse(ida()).stands().find(number).orElseThrow();
        assertThat(east.hole().lineOfPlay().orElseThrow().atGreen().degrees()).isEqualTo(90);
        var before = north.hole().green().polygon().getEnvelopeInternal();
        var after = east.hole().green().polygon().getEnvelopeInternal();
        assertThat(after.getWidth()).isCloseTo(before.getHeight(), within(1e-6));
        assertThat(after.getWidth()).isGreaterThan(after.getHeight());
    }

    @Test
    void wrongMeasuresAreToldWhereTheyStand() {
        begun();
        Map<String, String> typed = oval("7b!", "sideways");
        typed.put("left2", "nine");
        typed.put("on3", "9");
        typed.put("unit", "cubits");
        assertThat(wrongOf(() -> new PacedStep(ida()).keep(0, typed, PACE)))
                .containsExactlyInAnyOrder("hole", "play", "left2", "on3", "unit");
        Map<String, String> far = oval("7", "0");
        far.putAll(Map.of("frontEast", "52.0", "frontNorth", "-27.0")); // exchanged
        assertThat(wrongOf(() -> new PacedStep(ida()).keep(0, far, PACE))).containsExactly("frontEast");
        Map<String, String> large = oval("7", "0");
        large.put("left3", "600");
        assertThat(wrongOf(() -> new PacedStep(ida()).keep(0, large, PACE))).containsExactly("length");
        assertThat(new BeginCourse(ida()).stands().greens()).isEmpty();
    }

    private static final Map<String, String> NORTH_UP = Map.of(
            "width",
            "2000",
            "height",
            "1000",
            "firstRight",
            "0",
            "firstDown",
            "1000",
            "firstEast",
            "500000",
            "firstNorth",
            "5761000",
            "secondRight",
            "2000",
            "secondDown",
            "1000",
            "secondEast",
            "500400",
            "secondNorth",
            "5761000");

    /** A pixel is 0.2 m: 100 px right are 20 m east of the first point, 900 px down are 20 m north of it. */
    @Test
    void aGreenIsTracedOnAPicture() {
        begun();
        assertThat(wrongOf(() -> new PictureStep(ida()).keepGreen(Map.of("corners", "1 1\n2 2\n3 1"))))
                .containsExactly("corners");
        new PictureStep(ida()).keepPicture(NORTH_UP);
        new PictureStep(ida())
                .keepGreen(Map.of("hole", "4", "play", "180", "corners", "100 900\n200, 900\n200;800\n100 800\n"));
        BegunGreen green = new BeginCourse(ida()).stands().greens().get(0);
        assertThat(green.hole().green().areaSquareMetres()).isCloseTo(400, within(1e-6));
        assertThat(green.hole().green().centroid().distanceMetres(new MapPoint(500_030, 5_761_030)))
                .isLessThan(1e-6);
    }

    @Test
    void whatCannotBeAPictureOrAGreenIsRefused() {
        begun();
        Map<String, String> near = new HashMap<>(NORTH_UP);
        near.put("secondEast", "500010");
        assertThat(wrongOf(() -> new PictureStep(ida()).keepPicture(near))).containsExactly("secondEast");
        Map<String, String> out = new HashMap<>(NORTH_UP);
        out.put("firstRight", "2001");
        out.put("firstNorth", "");
        assertThat(wrongOf(() -> new PictureStep(ida()).keepPicture(out)))
                .containsExactlyInAnyOrder("firstRight", "firstNorth");
        new PictureStep(ida()).keepPicture(NORTH_UP);
        for (String corners :
                new String[] {"100 900\n200 900", "100 900\n200 800\n200 900\n100 800", "100 900\nx 2\n3 4"}) {
            assertThat(wrongOf(() -> new PictureStep(ida()).keepGreen(Map.of("corners", corners))))
                    .as(corners)
                    .containsExactly("corners");
        }
    }

    private SourceFile map(int greens) throws IOException {
        byte[] bytes = Files.readAllBytes(MadeCourse.outlines(Files.createDirectories(data.resolve("map")), greens));
        return new SourceFile("map.geojson", () -> new ByteArrayInputStream(bytes));
    }

    @Test
    void aMapBringsItsGreensOnce() throws IOException {
        begun();
        assertThat(wrongOf(() -> new MapStep(ida()).keep(map(2)))).containsExactly("file"); // 1360 km away
        var there = new HashMap<>(place());
        there.putAll(MadePlace.ofMap());
        new PlaceStep(ida()).keep(there);
        assertThat(new MapStep(ida()).keep(map(2)).added()).isEqualTo(2);
        MapStep.Brought again = new MapStep(ida()).keep(map(3));
        assertThat(again.added()).isEqualTo(1);
        assertThat(again.there()).isEqualTo(2);
        assertThat(new BeginCourse(ida()).stands().greens())
                .allMatch(BegunGreen::named)
                .allMatch(green -> green.hole().lineOfPlay().isPresent());
        SourceFile bad =
                new SourceFile("bad.geojson", () -> new ByteArrayInputStream("{".getBytes(StandardCharsets.UTF_8)));
        assertThat(wrongOf(() -> new MapStep(ida()).keep(bad))).containsExactly("file");
        assertThat(wrongOf(() -> new PlaceStep(ida()).keep(place()))).containsExactly("longitude");
    }

    @Test
    void aNameStandsOnce_andWhatIsMissingKeepsTheCourseBack() {
        begun();
        new PacedStep(ida()).keep(0, oval("1", "0"), PACE);
        assertThat(wrongOf(() -> new PacedStep(ida()).keep(0, oval("1", "0"), PACE)))
                .containsExactly("hole");
        new PacedStep(ida()).keep(0, oval("", ""), PACE);
        assertThat(wrongOf(() -> new NumberStep(ida())
                        .keep(Map.of("hole-1", "1", "play-1", "0", "hole-2", "1", "play-2", "400"))))
                .containsExactlyInAnyOrder("hole-2", "play-2");
        LookOver.Answer seen = new LookOver(ida()).of();
        assertThat(seen.missing())
                .extracting(one -> one.says().key())
                .containsExactly("begin.look.unnamed", "begin.look.noDirection");
        assertThat(seen.doubtful())
                .extracting(one -> one.says().key())
                .containsExactly("begin.look.unplaced", "begin.look.noHazards", "begin.look.settings");
        assertThatThrownBy(() -> new FinishCourse(ida()).finish()).isInstanceOf(Problem.class);
        new NumberStep(ida()).keep(Map.of("hole-1", "1", "play-1", "0", "hole-2", "", "play-2", "", "out-2", "on"));
        Course course = new FinishCourse(ida()).finish();
        assertThat(course.holes()).extracting(hole -> hole.id()).containsExactly("1");
        assertThatThrownBy(() -> new BeginCourse(ida()).stands())
                .isInstanceOfSatisfying(
                        Problem.class, there -> assertThat(there.what().key()).isEqualTo("problem.begin.there"));
        assertThatThrownBy(() -> new PlaceStep(ida()).keep(place())).isInstanceOf(Problem.class);
    }

    @Test
    void firstSettingsAreSetWithTheirAudit_andOnlyWhatIsOtherwise() {
        begun();
        FirstSettings settings = new FirstSettings(ida());
        Map<String, String> typed = new HashMap<>();
        settings.asked().forEach(entry -> typed.put(entry.setting().key(), entry.value()));
        assertThat(typed).hasSize(12);
        typed.put("holelocation.edgePaces", "5");
        Map<String, String> wrong = new HashMap<>(typed);
        wrong.put("holelocation.edgePaces", "many");
        wrong.put("rotation.scheme", "setCycle");
        assertThat(wrongOf(() -> settings.keep(wrong)))
                .containsExactlyInAnyOrder("holelocation.edgePaces", "rotation.scheme");
        assertThat(new BeginCourse(ida()).stands().decided()).isFalse();
        settings.keep(typed);
        assertThat(new BeginCourse(ida()).stands().decided()).isTrue();
        LocalDate today = LocalDate.of(2026, 6, 20);
        var changes =
                ida().read(stores -> stores.policies().history("three-birches")).changes();
        assertThat(changes)
                .extracting(change -> change.key() + " " + change.effective())
                .containsExactly("holelocation.edgePaces " + today);
        List<AuditLine> trail = ida().read(stores ->
                stores.audit().between(Instant.EPOCH, CLOCK.instant().plusSeconds(1)));
        assertThat(trail).extracting(line -> line.what()).contains(AuditKind.POLICY_CHANGED);
    }

    @Test
    void whoeverMayNotIsRefused() {
        assertThatThrownBy(() -> new PlaceStep(session(Role.READER)).keep(place()))
                .isInstanceOf(Problem.class);
        begun();
        assertThatThrownBy(() -> new BeginCourse(session(Role.OFFICIAL)).stands())
                .isInstanceOf(Problem.class);
        assertThatThrownBy(() -> new FirstSettings(session(Role.CHANGER)).keep(Map.of()))
                .isInstanceOf(Problem.class);
    }

    private static Map<String, String> onGrid(String hole, String play, String corners) {
        return new HashMap<>(Map.of("hole", hole, "play", play, "corners", corners));
    }

    /** A pace is a metre here; on is north as long as nobody said how it is played to. */
    @Test
    void aGreenDrawnOnTheGridTurnsWithItsWayOfPlay() {
        begun();
        int number = new GridStep(ida()).keep(0, onGrid("", "", "0 L8\n30 L8\n30 R8\n0 R8"), 1);
        new HazardStep(ida()).onGrid(number, Hazard.Kind.BUNKER, Map.of("corners", "28 R10\n32 R10\n32 R13"), 1);
        BegunGreen north = new BeginCourse(ida()).stands().find(number).orElseThrow();
        Envelope edge = north.hole().green().polygon().getEnvelopeInternal();
        assertThat(edge.getHeight()).isCloseTo(30, within(1e-6));
        assertThat(edge.getWidth()).isCloseTo(16, within(1e-6));
        new NumberStep(ida()).keep(Map.of("hole-" + number, "4", "play-" + number, "90"));
        BegunGreen east = new BeginCourse(ida()).stands().find(number).orElseThrow();
        Envelope turned = east.hole().green().polygon().getEnvelopeInternal();
        assertThat(turned.getWidth()).isCloseTo(30, within(1e-6));
        assertThat(turned.centre().distance(edge.centre())).isCloseTo(0, within(1e-6));
        Envelope bunker = east.hole().hazards().get(0).area().getEnvelopeInternal();
        assertThat(bunker.getMinX() - turned.getMinX()).isCloseTo(28, within(1e-6)); // still 28 on
        assertThat(turned.getMinY() - bunker.getMaxY()).isCloseTo(2, within(1e-6)); // and 2 m off its right, now south
        new GridStep(ida()).keep(number, onGrid("4", "90", "0 L9\n30 L9\n30 R9\n0 R9"), 1);
        BegunGreen wider = new BeginCourse(ida()).stands().find(number).orElseThrow();
        assertThat(wider.hole().hazards()).isEqualTo(east.hole().hazards());
        assertThat(wider.hole().green().polygon().getEnvelopeInternal().getHeight())
                .isCloseTo(18, within(1e-6));
        new NumberStep(ida()).keep(Map.of("hole-" + number, "4", "play-" + number, "0"));
        Envelope back = hazard(number).area().getEnvelopeInternal();
        Envelope before = north.hole().hazards().get(0).area().getEnvelopeInternal();
        assertThat(back.getMaxX()).isCloseTo(before.getMaxX(), within(1e-3));
        assertThat(back.getMaxY()).isCloseTo(before.getMaxY(), within(1e-3));
        new HazardStep(ida()).remove(number, 1);
        assertThat(new BeginCourse(ida())
                        .stands()
                        .find(number)
                        .orElseThrow()
                        .hole()
                        .hazards())
                .isEmpty();
    }

    private Hazard hazard(int number) {
        return new BeginCourse(ida())
                .stands()
                .find(number)
                .orElseThrow()
                .hole()
                .hazards()
                .get(0);
    }

    @Test
    void whatIsWrongOnTheGridIsToldOfItsField() {
        begun();
        assertThat(wrongOf(() -> new GridStep(ida()).keep(0, onGrid("", "400", "0 L8\n30 R8\n30 L8\n0 R8"), 1)))
                .containsExactlyInAnyOrder("corners", "play");
        assertThat(wrongOf(() -> new GridStep(ida()).keep(0, onGrid("", "", "0 L1\n1 L1\n1 R1"), 1)))
                .containsExactly("corners");
        int number = new GridStep(ida()).keep(0, onGrid("", "", "0 L8\n30 L8\n30 R8\n0 R8"), 1);
        assertThat(wrongOf(() -> new HazardStep(ida())
                        .onGrid(number, Hazard.Kind.WATER, Map.of("corners", "-5 L20\n40 L20\n40 R20\n-5 R20"), 1)))
                .containsExactly("corners");
        assertThatThrownBy(() -> new HazardStep(ida()).remove(number, 1)).isInstanceOf(Problem.class);
        assertThatThrownBy(() -> new HazardStep(ida()).onGrid(9, Hazard.Kind.WATER, Map.of("corners", ""), 1))
                .isInstanceOf(Problem.class);
    }

    /** Measured anew from another place, a paced green takes its bunkers along. */
    @Test
    void bunkersOfAPacedGreenGoWithItsLine() {
        begun();
        int number = new PacedStep(ida()).keep(0, oval("1", "0"), PACE);
        new HazardStep(ida()).onGrid(number, Hazard.Kind.BUNKER, Map.of("corners", "10 R14\n14 R14\n14 R17"), 1);
        Envelope before = hazard(number).area().getEnvelopeInternal();
        MapPoint front =
                PacedStep.inARow(number, new BeginCourse(ida()).stands().place());
        new PacedStep(ida()).keep(number, oval("1", "180"), PACE);
        Envelope turned = hazard(number).area().getEnvelopeInternal();
        assertThat(turned.getMinX() - front.east()).isCloseTo(front.east() - before.getMaxX(), within(1e-3));
        assertThat(turned.getMinY() - front.north()).isCloseTo(front.north() - before.getMaxY(), within(1e-3));
    }
}
