package org.cupwright.formats.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.cupwright.course.Course;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.InventedMap;
import org.cupwright.message.Message;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

class CourseOutlinesTest {
    private static List<FindingKind> kinds(ReadCourse read) {
        return read.findings().stream().map(Finding::kind).toList();
    }

    private static List<String> ids(ReadCourse read) {
        return read.course().holes().stream().map(Hole::id).toList();
    }

    @Test
    void readsAHoleWithItsLineBunkerTeeAndNumbers() {
        ReadCourse read = new InventedMap()
                .area(0, 0, 500, "\"leisure\":\"golf_course\",\"name\":\"Invented Links\"")
                .green(0, 300, 12, "")
                .line(0, 0, 0, 301, ",\"ref\":7,\"par\":\"4\",\"dist\":\"330 yd\"")
                .area(17, 300, 4, "\"golf\":\"bunker\"")
                .area(90, 300, 4, "\"golf\":\"bunker\"")
                .area(-20, 310, 5, "\"golf\":\"lateral_water_hazard\"")
                .area(0, -3, 6, "\"golf\":\"tee\",\"name\":\"white\"")
                .read();
        Course course = read.course();
        assertThat(course.name()).isEqualTo("Invented Links");
        assertThat(course.frame().epsg()).isEqualTo(32625);
        Hole hole = course.find("7").orElseThrow();
        assertThat(hole.green().areaSquareMetres()).isCloseTo(451, within(2.0)); // 48 sides in a circle of 12 m
        assertThat(hole.lineOfPlay().orElseThrow().atGreen().east()).isCloseTo(0, within(0.03));
        assertThat(hole.par()).hasValue(4);
        assertThat(hole.measuredMetres().orElseThrow()).isCloseTo(301.75, within(0.01));
        assertThat(hole.hazards()).extracting(Hazard::kind).containsExactly(Hazard.Kind.BUNKER, Hazard.Kind.WATER);
        assertThat(hole.tees()).extracting("name").containsExactly("white");
        assertThat(read.findings()).isEmpty();
    }

    private static List<String> blocks(ReadCourse read) {
        return read.course().blocks().stream()
                .map(block -> (block.name() + " " + String.join(",", block.holes())).strip())
                .toList();
    }

    @Test
    void aPracticeGreenHasItsHolesAfterTheRoundAndOneDirectionForAll() {
        InventedMap map = new InventedMap()
                .green(0, 300, 12, "")
                .line(0, 0, 0, 301, ",\"ref\":\"R1\"")
                .green(35, 300, 12, ",\"ref\":\"P\",\"practice\":\"yes\",\"cups\":3,\"name\":\"By the shed\"")
                .line(0, 0, 26, 300, ",\"ref\":\"R2\"");
        ReadCourse read = map.read(InventedMap.request().withTowards(Map.of("P", Heading.ofDegrees(90))));
        Course course = read.course();

        assertThat(ids(read)).containsExactly("R1", "R2", "P1", "P2", "P3");
        assertThat(course.round()).extracting(Hole::id).containsExactly("R1", "R2");
        assertThat(blocks(read)).containsExactly("R1,R2", "By the shed P1,P2,P3");
        Hole second = course.find("P2").orElseThrow();
        assertThat(second.lineOfPlay().orElseThrow().atGreen().degrees()).isCloseTo(90, within(0.01));
        assertThat(course.sharingGreenWith(second)).extracting(Hole::id).containsExactly("P1", "P3");
        assertThat(kinds(read)).containsExactly(FindingKind.HOLES_SHARE_GREEN); // R1 and R2, of the lines alone
    }

    @Test
    void aPracticeGreenWithoutADirectionIsToldOnceAndASlipInItsCupsToo() {
        ReadCourse one = new InventedMap()
                .green(0, 0, 12, ",\"practice\":\"yes\",\"cups\":2")
                .read();
        assertThat(ids(one)).containsExactly("P1", "P2");
        assertThat(kinds(one)).containsExactly(FindingKind.NO_LINE_OF_PLAY);
        ReadCourse slip = new InventedMap()
                .green(0, 0, 12, ",\"ref\":\"P1\",\"practice\":\"yes\",\"cups\":\"some\"")
                .read();
        assertThat(ids(slip)).containsExactly("P1");
        assertThat(kinds(slip)).containsExactly(FindingKind.CUPS_NOT_READABLE, FindingKind.NO_LINE_OF_PLAY);
        ReadCourse numbered = new InventedMap()
                .green(0, 0, 12, ",\"ref\":\"P1\",\"practice\":\"yes\",\"cups\":2")
                .read();
        assertThat(ids(numbered)).containsExactly("P1a", "P1b");
    }

    @Test
    void nineGreensPlayedTwiceHaveOneHoleOrTwoAsTheMapSays() {
        InventedMap twoHoles = new InventedMap();
        InventedMap sameHole = new InventedMap();
        InventedMap oneCup = new InventedMap();
        for (int i = 1; i <= 9; i++) {
            int east = 100 * i;
            String refs = ",\"ref\":\"" + i + ";" + (i + 9) + "\"";
            twoHoles.green(east, 300, 12, refs).line(east, 0, east, 300, ",\"ref\":" + i);
            sameHole.green(east, 300, 12, refs).line(east, 0, east, 300, refs);
            oneCup.green(east, 300, 12, ",\"cups\":1")
                    .line(east + 5, 0, east, 300, ",\"ref\":" + (i + 9))
                    .line(east, 0, east, 300, ",\"ref\":" + i);
        }
        assertThat(blocks(twoHoles.read())).containsExactly("1,2,3,4,5,6,7,8,9", "10,11,12,13,14,15,16,17,18");
        assertThat(blocks(sameHole.read())).containsExactly("1,2,3,4,5,6,7,8,9");
        assertThat(blocks(oneCup.read())).containsExactly("1,2,3,4,5,6,7,8,9");
        assertThat(kinds(oneCup.read())).isEmpty();
    }

    @Test
    void ninesAreKnownByTheirNamesTheirLettersOrTheirNumbers() {
        assertThat(blocks(holes(18, i -> "").read())).hasSize(1);
        assertThat(blocks(holes(20, i -> "").read())).hasSize(1);
        assertThat(blocks(holes(27, i -> "").read()))
                .extracting(block -> block.split(",")[0])
                .containsExactly("1", "10", "19");
        assertThat(blocks(holes(36, i -> "").read()))
                .extracting(block -> block.split(",")[0])
                .containsExactly("1", "19");
        assertThat(blocks(holes(36, i -> i <= 18 ? "Sea" : i <= 27 ? "Hill" : "Wood")
                        .read()))
                .extracting(block -> block.split(",")[0])
                .containsExactly("Sea 1", "Hill 19", "Wood 28");
        InventedMap lettered = new InventedMap();
        InventedMap repeated = new InventedMap();
        for (int i = 0; i < 27; i++) {
            String loop = List.of("Lake", "Forest", "Moor").get(i / 9);
            String number = Integer.toString(i % 9 + 1);
            lettered.green(100 * i, 0, 12, ",\"ref\":\"" + loop.charAt(0) + number + "\"");
            repeated.green(100 * i, 0, 12, ",\"ref\":\"" + number + "\",\"loop\":\"" + loop + "\"");
        }
        assertThat(blocks(lettered.read()).get(1)).isEqualTo("L1,L2,L3,L4,L5,L6,L7,L8,L9");
        assertThat(blocks(repeated.read()).get(1)).isEqualTo("Lake L1,L2,L3,L4,L5,L6,L7,L8,L9");
    }

    private static InventedMap holes(int count, IntFunction<String> loop) {
        InventedMap map = new InventedMap();
        for (int i = 1; i <= count; i++) {
            map.green(100 * i, 0, 12, ",\"ref\":" + i + ",\"loop\":\"" + loop.apply(i) + "\"");
        }
        return map;
    }

    @Test
    void putsHolesInRoundOrder() {
        InventedMap map = new InventedMap();
        String[] refs = {"10", "B2", "2", "1"};
        for (int i = 0; i < refs.length; i++) {
            map.green(100 * i, 0, 12, ",\"ref\":\"" + refs[i] + "\"");
        }
        map.green(900, 0, 12, "");
        assertThat(ids(map.read())).containsExactly("1", "2", "10", "B2", "G1");
    }

    @Test
    void namesGreensWithoutRefInTheOrderOfTheFile() {
        ReadCourse read =
                new InventedMap().green(0, 0, 12, "").green(100, 0, 13, "").read();
        assertThat(ids(read)).containsExactly("G1", "G2");
        assertThat(kinds(read))
                .containsOnly(FindingKind.GREEN_WITHOUT_REF, FindingKind.NO_LINE_OF_PLAY)
                .hasSize(4);
    }

    @Test
    void keepsBothGreensOfARefUsedTwice() {
        ReadCourse read = new InventedMap()
                .green(0, 0, 12, ",\"ref\":\"7\"")
                .green(100, 0, 12, ",\"ref\":\"7b\"")
                .green(200, 0, 12, ",\"ref\":\"7\"")
                .read();
        assertThat(ids(read)).containsExactly("7", "7b", "7c");
        assertThat(kinds(read)).contains(FindingKind.REF_USED_TWICE);
    }

    @Test
    void readsWordsAboutARefAndSaysWhatItCannotUse() {
        ReadCourse read = new InventedMap()
                .green(0, 0, 12, ",\"ref\":\"Hole 3\"")
                .green(100, 0, 12, ",\"ref\":\"old course 4\"")
                .read();
        assertThat(ids(read)).containsExactly("3", "oldcours");
        assertThat(kinds(read)).contains(FindingKind.REF_NOT_USABLE);
    }

    @Test
    void givesTwoHolesOfOneGreenTheSameOutline() {
        ReadCourse read = new InventedMap()
                .green(0, 0, 18, "")
                .line(0, -300, 0, 0, ",\"ref\":\"2\"")
                .line(300, 0, 1, 0, ",\"ref\":\"16\"")
                .read();
        assertThat(ids(read)).containsExactly("2", "16");
        assertThat(read.course().holes().get(0).green())
                .isEqualTo(read.course().holes().get(1).green());
        assertThat(kinds(read)).containsExactly(FindingKind.HOLES_SHARE_GREEN);
    }

    @Test
    void readsARefThatNamesTwoHoles() {
        ReadCourse read = new InventedMap().green(0, 0, 12, ",\"ref\":\"1;10\"").read();
        assertThat(ids(read)).containsExactly("1", "10");
    }

    @Test
    void believesTheLineWhereGreenAndLineDisagree() {
        ReadCourse read = new InventedMap()
                .green(0, 0, 12, ",\"ref\":\"5\"")
                .line(0, -300, 0, 0, ",\"ref\":\"6\"")
                .read();
        assertThat(ids(read)).containsExactly("6");
        assertThat(kinds(read)).containsExactly(FindingKind.REF_DISAGREES);
    }

    @Test
    void matchesALineThatEndsShortAndTellsOneThatEndsFarAway() {
        InventedMap map = new InventedMap().green(0, 0, 12, "");
        assertThat(ids(map.line(0, -300, 0, -40, ",\"ref\":\"1\"").read())).containsExactly("1");
        ReadCourse far = new InventedMap()
                .green(0, 0, 12, "")
                .line(0, -300, 0, -60, ",\"ref\":\"1\"")
                .read();
        Finding finding = far.findings().get(0);
        assertThat(finding.kind()).isEqualTo(FindingKind.LINE_ENDS_FAR_FROM_GREEN);
        assertThat(((Message.Length) finding.value()).metres()).isCloseTo(48, within(0.5));
        assertThat(ids(far)).containsExactly("G1");
    }

    @Test
    void tellsALineThatRunsFromTheGreenToTheTee() {
        ReadCourse read = new InventedMap()
                .green(0, 0, 12, ",\"ref\":\"1\"")
                .line(0, 0, 0, -300, ",\"ref\":\"1\"")
                .read();
        assertThat(kinds(read)).containsExactly(FindingKind.LINE_DRAWN_BACKWARDS, FindingKind.NO_LINE_OF_PLAY);
        assertThat(read.course().holes().get(0).lineOfPlay()).isEmpty();
    }

    @Test
    void takesTheDirectionAPersonGives() {
        InventedMap map = new InventedMap()
                .green(0, 0, 12, ",\"ref\":\"1\"")
                .green(100, 0, 12, ",\"ref\":\"2\"")
                .line(0, -300, 0, 0, ",\"ref\":\"1\"");
        Map<String, Heading> towards = Map.of("1", new Heading(90), "2", new Heading(10), "99", new Heading(1));
        ReadCourse read = map.read(InventedMap.request().withTowards(towards));
        assertThat(read.course()
                        .find("1")
                        .orElseThrow()
                        .lineOfPlay()
                        .orElseThrow()
                        .atGreen()
                        .degrees())
                .isCloseTo(90, within(1e-6));
        assertThat(kinds(read)).containsExactly(FindingKind.HOLE_UNKNOWN);
    }

    @Test
    void tellsGreensOfStrangeSizeAndGreensThatOverlap() {
        ReadCourse read = new InventedMap()
                .green(0, 0, 30, ",\"ref\":\"1\"")
                .green(100, 0, 4, ",\"ref\":\"2\"")
                .green(28, 0, 8, ",\"ref\":\"3\"")
                .read();
        assertThat(kinds(read))
                .startsWith(FindingKind.GREEN_VERY_LARGE, FindingKind.GREEN_VERY_SMALL, FindingKind.GREENS_OVERLAP);
    }

    @Test
    void makesAGreenOfEveryPartThatIsLargeEnough() {
        String parts = "[[" + InventedMap.ring(0, 0, 12) + "],[" + InventedMap.ring(100, 0, 12) + "],["
                + InventedMap.ring(200, 0, 3) + "]]";
        ReadCourse read = new InventedMap()
                .feature("MultiPolygon", parts, "\"golf\":\"green\"")
                .read();
        assertThat(ids(read)).containsExactly("G1", "G2");
        assertThat(kinds(read)).startsWith(FindingKind.GREEN_IN_PARTS);
        ReadCourse one = new InventedMap()
                .feature("MultiPolygon", "[[" + InventedMap.ring(0, 0, 12) + "]]", "\"golf\":\"green\"")
                .read();
        assertThat(kinds(one)).doesNotContain(FindingKind.GREEN_IN_PARTS);
    }

    @Test
    void givesTeesByTheirRefOnlyWhereOneHoleHasIt() {
        InventedMap map =
                new InventedMap().green(0, 0, 12, ",\"ref\":\"7\"").area(300, 0, 5, "\"golf\":\"tee\",\"ref\":\"7\"");
        assertThat(map.read().course().find("7").orElseThrow().tees()).hasSize(1);
        map.green(600, 0, 12, ",\"ref\":\"7\"");
        assertThat(map.read().course().find("7").orElseThrow().tees()).isEmpty();
    }

    @Test
    void takesUntaggedPolygonsForGreensAndSaysSo() {
        ReadCourse read = new InventedMap().area(0, 0, 12, "\"ref\":\"1\"").read();
        assertThat(ids(read)).containsExactly("1");
        assertThat(kinds(read)).startsWith(FindingKind.GREENS_NOT_TAGGED);
    }

    @Test
    void tellsParAndLengthThatCannotBeRead() {
        ReadCourse read = new InventedMap()
                .green(0, 0, 12, "")
                .line(0, -300, 0, 0, ",\"ref\":\"1\",\"par\":\"four\",\"dist\":\"5 miles\"")
                .read();
        assertThat(kinds(read)).containsExactly(FindingKind.PAR_NOT_READABLE, FindingKind.LENGTH_NOT_READABLE);
    }

    @Test
    void usesTheSurveysFrameWhereItIsFitForMeasuring() {
        InventedMap map = new InventedMap().green(0, 0, 12, ",\"ref\":\"1\"");
        ReadCourse utm = map.read(InventedMap.request().inFrame(CoordinateFrame.of(32626)));
        assertThat(utm.course().frame().epsg()).isEqualTo(32626);
        ReadCourse mercator = map.read(InventedMap.request().inFrame(CoordinateFrame.of(3857)));
        assertThat(mercator.course().frame().epsg()).isEqualTo(32625);
        assertThat(kinds(mercator)).startsWith(FindingKind.FRAME_NOT_FOR_MEASURING);
        ReadCourse degrees = map.read(InventedMap.request().inFrame(CoordinateFrame.of(4326)));
        assertThat(degrees.course().frame().epsg()).isEqualTo(32625);
    }

    @Test
    void leavesOutABrokenBunkerAndKeepsTheCourse() {
        ReadCourse read = new InventedMap()
                .green(0, 0, 12, ",\"ref\":\"1\"")
                .feature("Polygon", "[[[-30.5,40],[-30.4,40],[-30.5,40]]]", "\"golf\":\"bunker\"")
                .feature("Point", "[-30.5,40]", "\"golf\":\"green\"")
                .read();
        assertThat(kinds(read))
                .containsExactly(
                        FindingKind.FEATURE_LEFT_OUT, FindingKind.FEATURE_LEFT_OUT, FindingKind.NO_LINE_OF_PLAY);
    }
}
