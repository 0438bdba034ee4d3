package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.app.sheets.PaperText;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is said and printed of places on an invented green 20 m wide and 30 m deep, whichever way it is played. Worked
 * by hand: a pace is 0.914 m, "on" counts from the front, thirds are 10 m deep and 6.67 m wide.
 */
class EightHeadingsIT {
    private static final double EAST = 500_000;
    private static final double NORTH = 4_400_000;
    private static final double APART = 200;
    private static final double WIDE = 20;
    private static final double DEEP = 30;

    /**
     * A place and what is said of it.
     *
     * @param left metres from the left edge
     * @param front metres from the front
     * @param flag which flag stands there, by our defaults
     */
    private record Said(double left, double front, String area, String paces, String flag) {}

    private static final List<Said> PLACES = List.of(
            new Said(3, 4, "front left", "4½ on · 3½ from left", "F red"), // 4.38 and 3.28 paces
            new Said(9, 5, "front centre", "5½ on · 10 from left", "F red"), // 5.47 and 9.85
            new Said(16, 6, "front right", "6½ on · 4½ from right", "F red"), // 6.56 and 4.38
            new Said(4.2, 15, "middle left", "16½ on · 4½ from left", "M white"), // 16.41 and 4.60
            new Said(11.5, 14, "middle", "15½ on · 9½ from right", "M white"), // 15.32 and 9.30
            new Said(17.1, 12, "middle right", "13 on · 3 from right", "M white"), // 13.13 and 3.17
            new Said(5, 26, "back left", "28½ on · 5½ from left", "B blue"), // 28.45 and 5.47
            new Said(8.3, 22, "back centre", "24 on · 9 from left", "B blue"), // 24.07 and 9.08
            new Said(15, 23.5, "back right", "25½ on · 5½ from right", "B blue")); // 25.71 and 5.47

    /** The same edge distance that asks for care, 3.8 m, on each side: from where the other way is open. */
    private static final List<Said> BY_AN_EDGE = List.of(
            new Said(3.8, 15, "", "", "more room to the right"),
            new Said(10.4, 26.2, "", "", "more room to the front"),
            new Said(16.2, 15, "", "", "more room to the left"),
            new Said(9.6, 3.8, "", "", "more room to the back"));

    @TempDir
    static Path shared;

    @TempDir
    Path files;

    private InProcess cupwright;

    @BeforeAll
    static void aCoursePlayedEveryWay() throws IOException {
        StringJoiner features = new StringJoiner(",");
        for (EightHeadings play : EightHeadings.values()) {
            int hole = play.ordinal() + 1;
            String ring = String.join(
                    ",", at(play, 0, 0), at(play, WIDE, 0), at(play, WIDE, DEEP), at(play, 0, DEEP), at(play, 0, 0));
            features.add(feature("green", hole, "Polygon", "[[" + ring + "]]"))
                    .add(feature(
                            "hole",
                            hole,
                            "LineString",
                            "[" + at(play, WIDE / 2, -300) + "," + at(play, WIDE / 2, DEEP / 2) + "]"));
        }
        Path map = MadeCourse.write(shared.resolve("map.geojson"), MadeCourse.collection(features.toString()));
        InProcess first = new InProcess(shared.resolve("data"));
        said(first, "import", "--course", "made", "--outlines", map);
        said(first, "plan");
        said(first, "backup", shared.resolve("planned.db"));
    }

    @BeforeEach
    void aFolderOfItsOwn() {
        cupwright = new InProcess(files.resolve("data"));
        said(cupwright, "restore", shared.resolve("planned.db"));
    }

    private static String feature(String golf, int ref, String type, String coordinates) {
        return "{\"type\":\"Feature\",\"properties\":{\"golf\":\"" + golf + "\",\"ref\":\"" + ref
                + "\",\"par\":\"4\"},\"geometry\":{\"type\":\"" + type + "\",\"coordinates\":" + coordinates + "}}";
    }

    private static String at(EightHeadings play, double left, double front) {
        return "[" + where(play, left, front) + "]";
    }

    private static String where(EightHeadings play, double left, double front) {
        return String.format(
                Locale.ROOT,
                "%.3f,%.3f",
                EAST + APART * play.ordinal() + play.east(left, front),
                NORTH + play.north(left, front));
    }

    private static String said(InProcess cupwright, Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result.out();
    }

    @Test
    void everyPlaceIsCalledTheSameWhicheverWayTheGreenIsPlayed() {
        for (EightHeadings play : EightHeadings.values()) {
            for (Said place : PLACES) {
                String hole = Integer.toString(play.ordinal() + 1);
                assertThat(said(cupwright, "assess", "--hole", hole, "--at", where(play, place.left(), place.front())))
                        .as("%s, %s", play, place)
                        .contains("\n" + place.area() + " · " + place.paces() + "\n");
            }
        }
    }

    @Test
    void pacesLeadBackToThePlace() {
        for (EightHeadings play : EightHeadings.values()) {
            String hole = Integer.toString(play.ordinal() + 1);
            String json = said(cupwright, "assess", "--hole", hole, "--on", "10", "--side", "R5", "--json");
            // ten paces are 9.14 m, five from the right 15.43 m from the left
            String[] wanted = where(play, 15.43, 9.14).split(",", -1);
            assertThat(json)
                    .as(play.toString())
                    .contains("\"east\" : " + shortened(wanted[0]))
                    .contains("\"north\" : " + shortened(wanted[1]));
        }
    }

    private static String shortened(String metres) {
        return metres.substring(0, metres.length() - 2);
    }

    @Test
    void cardAndSheetSayItInTheSameWordsAndNameTheFlag() throws IOException {
        for (int first = 0; first < PLACES.size(); first += 3) {
            InProcess day = cupwright.daysLater(first);
            said(day, "plan");
            for (EightHeadings play : EightHeadings.values()) {
                cut(day, play, placeOf(play, first));
            }
            String card = paper(day, DayPaperFiles.CARD);
            String sheet = paper(day, DayPaperFiles.SHEET);
            for (EightHeadings play : EightHeadings.values()) {
                Said place = placeOf(play, first);
                String row = play.ordinal() + 1 + " " + place.area() + " " + place.paces() + " ";
                assertThat(card).contains(row + place.flag());
                assertThat(sheet).containsPattern(row + "[^A-Z]*" + place.flag());
            }
        }
    }

    private static Said placeOf(EightHeadings play, int first) {
        return PLACES.get((play.ordinal() + first) % PLACES.size());
    }

    private void cut(InProcess day, EightHeadings play, Said place) {
        said(
                day,
                "log",
                "add",
                "cup-changed",
                "--hole",
                play.ordinal() + 1,
                "--at",
                where(play, place.left(), place.front()));
    }

    private String paper(InProcess day, String file) throws IOException {
        Path folder = files.resolve("paper");
        said(day, "sheets", "--out", folder);
        return PaperText.words(Files.readAllBytes(folder.resolve(file)));
    }

    /** Every twenty days the hole lies by another edge of each green. */
    @Test
    void theCardSaysOnWhichSideThereIsMoreRoom() throws IOException {
        for (int first = 0; first < BY_AN_EDGE.size(); first++) {
            InProcess day = cupwright.daysLater(20 * first);
            said(day, "plan");
            for (EightHeadings play : EightHeadings.values()) {
                cut(day, play, BY_AN_EDGE.get((play.ordinal() + first) % BY_AN_EDGE.size()));
            }
            String card = paper(day, DayPaperFiles.CARD);
            for (EightHeadings play : EightHeadings.values()) {
                String more = BY_AN_EDGE
                        .get((play.ordinal() + first) % BY_AN_EDGE.size())
                        .flag();
                assertThat(card)
                        .as("hole %d", play.ordinal() + 1)
                        .containsPattern(
                                " " + (play.ordinal() + 1) + " (front|middle|back)[^A-Z]*[FMB] [a-z]+ [^A-Z·]*" + more);
            }
        }
    }

    /**
     * A level that is laid along the line of play, or along a heading of the map, and what it says of the ground.
     *
     * @param turned degrees by which the heading differs from the line of play; none where it is said to be along it
     */
    private record Level(Integer turned, double fall, double fallRight, String falls) {}

    private static final List<Level> LEVELS = List.of(
            new Level(null, 2, 0, "2.0 % to the back"),
            new Level(null, -2, 0, "2.0 % to the front"),
            new Level(null, 0, 1.5, "1.5 % to the right"),
            new Level(null, 0, -1.5, "1.5 % to the left"),
            new Level(90, 2, 0, "2.0 % to the right"),
            new Level(180, 2, 0, "2.0 % to the front"),
            new Level(270, 2, 0, "2.0 % to the left"),
            new Level(0, 3, 4, "5.0 % to the back right")); // 3, 4 and 5: 53 degrees to the right

    /** Headings of the map are the eighths of the compass, in the order of the eight ways to play. */
    @Test
    void whatALevelReadsFallsTheWayItWasRead() throws IOException {
        for (Level level : LEVELS) {
            StringJoiner lines = new StringJoiner("\n", "hole,on,side,heading,fall,fallRight\n", "\n");
            for (EightHeadings play : EightHeadings.values()) {
                String heading = level.turned() == null
                        ? "play"
                        : Integer.toString((45 * play.ordinal() + level.turned()) % 360);
                lines.add(play.ordinal() + 1 + ",12,L8," + heading + "," + level.fall() + "," + level.fallRight());
            }
            Path table = MadeCourse.write(files.resolve("levels.csv"), lines.toString());
            said(cupwright, "import", "--course", "made", "--levels", table); // in place of those before
            List<String> read = said(cupwright, "level", "list")
                    .lines()
                    .filter(line -> line.contains(" on · "))
                    .toList();
            assertThat(read)
                    .hasSize(8)
                    .allSatisfy(line -> assertThat(line)
                            .contains("middle · 12 on · 8 from left")
                            .contains(level.falls() + " "));
        }
    }

    /** Half paces, decimal points and both sides, as notebooks have them. */
    @Test
    void aNotebooksPacesLeadToThePlacesItMeans() throws IOException {
        StringJoiner lines = new StringJoiner("\n", "date;hole;on;side\n", "\n");
        for (EightHeadings play : EightHeadings.values()) {
            int hole = play.ordinal() + 1;
            lines.add("2026-06-01;" + hole + ";12½;L4")
                    .add("2026-06-02;" + hole + ";25.5;R 6,5")
                    .add("2026-06-03;" + hole + ";5;R 3");
        }
        Path table = MadeCourse.write(files.resolve("notebook.csv"), lines.toString());
        said(cupwright, "history", "import", table, "--yes");
        String list = said(cupwright, "log", "list", "--from", "2026-06-01", "--to", "2026-06-03")
                .replaceAll("\\s+", " ");
        assertThat(list.split("middle left · 12½ on · 4 from left", -1)).hasSize(9);
        assertThat(list.split("back right · 25½ on · 6½ from right", -1)).hasSize(9);
        assertThat(list.split("front right · 5 on · 3 from right", -1)).hasSize(9);
        // 25½ paces are 23.31 m, 6½ from the right 14.06 m from the left
        String json =
                said(cupwright, "log", "list", "--hole", "2", "--from", "2026-06-02", "--to", "2026-06-02", "--json");
        String[] wanted = where(EightHeadings.NORTH_EAST, 14.059, 23.307).split(",", -1);
        assertThat(json).contains(shortened(wanted[0])).contains(shortened(wanted[1]));
    }
}
