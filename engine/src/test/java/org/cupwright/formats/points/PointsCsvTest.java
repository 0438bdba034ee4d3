package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.formats.points.InventedPoints.gentle;
import static org.cupwright.formats.points.InventedPoints.read;

import java.util.Locale;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.InventedMap;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PointsCsvTest {
    private static final int POINTS = 41 * 41;

    private static void assertGentle(GreenPoints points) {
        assertThat(points.read()).isEqualTo(POINTS);
        SurveyPoints cloud = points.find("1").orElseThrow();
        assertThat(cloud.count()).isEqualTo((int) points.kept()).isGreaterThan(1500);
        for (int i = 0; i < cloud.count(); i++) {
            double x = cloud.east(i) - InventedPoints.MIDDLE.east();
            assertThat(cloud.heightMetres(i)).isCloseTo(100 + 0.02 * x, within(0.001));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"%.3f,%.3f,%.4f", "%.3f;%.3f;%.4f", "%.3f\t%.3f\t%.4f", "  %.3f   %.3f %.4f"})
    void readsThreeColumnsHoweverSeparated(String pattern) {
        assertGentle(read(gentle(pattern)));
    }

    @Test
    void readsDecimalCommas() {
        assertGentle(read(gentle("%.3f;%.3f;%.4f").replace('.', ',')));
        assertGentle(read(gentle("%.3f %.3f %.4f").replace('.', ',')));
    }

    @Test
    void readsPointNumberLayout() {
        assertGentle(read(gentle("17,%2$.3f,%1$.3f,%3$.4f,\"green, edge\"")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "class,Z,Y,X | 2,%3$.4f,%2$.3f,%1$.3f",
                "Easting (m),Northing (m),Elevation | %.3f,%.3f,%.4f",
                "id;north;east;height | a;%2$.3f;%1$.3f;%3$.4f"
            })
    void readsColumnsByTheirHeader(String header, String pattern) {
        assertGentle(read("# an invented file\n\n" + header + "\r\n" + gentle(pattern)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x,y,z,class | %.3f,%.3f,%.4f,2",
                "p,n,e,z | 3,%2$.3f,%1$.3f,%3$.4f",
                "i,z,x,y | 900,%3$.4f,%1$.3f,%2$.3f"
            })
    void readsColumnsAsSaid(String columns, String pattern) {
        assertGentle(read(gentle(pattern), PointRequest.asTheCourse(), columns));
    }

    @Test
    void readsColumnsByHeaderNamesThatWereSaid() {
        String text = "Rechts;Hoch;Kote\n" + gentle("%.3f;%.3f;%.4f");
        assertGentle(read(text, PointRequest.asTheCourse(), "rechts,hoch,kote"));
        Finding finding = InventedMap.troubleOf(() -> read(text, PointRequest.asTheCourse(), "rechts,hoch,zahl"));
        assertThat(finding.kind()).isEqualTo(FindingKind.COLUMNS_UNKNOWN);
    }

    @Test
    void keepsWantedClassesAndCountsAll() {
        String text = "x,y,z,class\n" + gentle("%.3f,%.3f,%.4f,2")
                + InventedPoints.lines("%.3f,%.3f,%.4f,5", (x, y) -> 112, 1);
        GreenPoints points = read(text, PointRequest.asTheCourse().ofClasses(2, 9));
        assertThat(points.byClass()).containsEntry(2, (long) POINTS).containsEntry(5, (long) POINTS);
        assertThat(points.read()).isEqualTo(2L * POINTS);
        assertThat(points.find("1").orElseThrow().count()).isLessThanOrEqualTo(POINTS);
    }

    @Test
    void saysWhichClassesThereAre() {
        String text = "x,y,z,class\n" + gentle("%.3f,%.3f,%.4f,1");
        Finding finding = InventedMap.troubleOf(
                () -> read(text, PointRequest.asTheCourse().ofClasses(2)));
        assertThat(finding.kind()).isEqualTo(FindingKind.NO_POINTS_OF_CLASS);
        assertThat(finding.tryThis().arguments()).containsExactly(new Message.Name("{1=1681}"));
    }

    @Test
    void tellsLinesThatDoNotRead() {
        String text = gentle("%.3f,%.3f,%.4f") + "1,2\n1,2,NaN\nsomething else\n1,2,1e999\n";
        GreenPoints points = read(text);
        assertThat(points.findings())
                .filteredOn(finding -> finding.kind() == FindingKind.LINE_NOT_READABLE)
                .extracting(Finding::where)
                .containsExactly(
                        Where.line(POINTS + 1), Where.line(POINTS + 2), Where.line(POINTS + 3), Where.line(POINTS + 4));
        assertThat(points.findings().get(2).value()).isEqualTo(new Message.Name("something else"));
    }

    @Test
    void tellsTheNumberOfLinesThatDoNotReadWhenTheyAreMany() {
        GreenPoints points = read(gentle("%.3f,%.3f,%.4f") + "no\n".repeat(500));
        assertThat(points.findings())
                .filteredOn(finding -> finding.kind() == FindingKind.LINE_NOT_READABLE)
                .hasSize(10);
        assertThat(points.findings())
                .filteredOn(finding -> finding.kind() == FindingKind.LINES_NOT_READABLE)
                .extracting(Finding::value)
                .containsExactly(new Message.Count(500));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | EMPTY_FILE",
                "# only a comment | EMPTY_FILE",
                "a,b,c | COLUMNS_UNKNOWN",
                "1,2 | COLUMNS_UNKNOWN",
                "1.5,2,3,4 | COLUMNS_UNKNOWN",
                "x,y,z | NO_POINTS",
                "NaN,NaN,NaN | LINE_NOT_READABLE"
            })
    void saysWhatIsWrongWithAFile(String text, FindingKind kind) {
        assertThat(InventedMap.troubleOf(() -> read(text)).kind()).isEqualTo(kind);
    }

    @Test
    void saysWhenItIsNoText() {
        assertThat(InventedMap.troubleOf(() -> read("LASF\u0000\u0001\u0002")).kind())
                .isEqualTo(FindingKind.NOT_TEXT);
        assertThat(InventedMap.troubleOf(() -> read("1".repeat(5000))).kind()).isEqualTo(FindingKind.NOT_TEXT);
    }

    @Test
    void formatsNumbersTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertGentle(read(gentle("%.3f,%.3f,%.4f")));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aCommaBeforeDecimalsIsRefusedWhereItAlsoPartsTheColumns() {
        Finding finding = InventedMap.troubleOf(() -> read("x,y,z\n484819,25,4432768,5,100,75\n"));
        assertThat(finding.kind()).isEqualTo(FindingKind.DECIMAL_COMMAS);
        assertThat(finding.where()).isEqualTo(Where.line(2));
        assertThat(finding.value()).isEqualTo(new Message.Name("484819,25,4432768,5,100,75"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"x,y,z | %.3f,%.3f,%.4f,7,8,9", "x;y;z | %.0f;%.0f;%.0f;7;8;9", "x,y,z,n | %.0f,%.0f,%.0f,7"})
    void furtherNumbersAreNoDecimals(String header, String pattern) {
        assertThat(read(header + "\n" + gentle(pattern)).read()).isEqualTo(POINTS);
    }

    @Test
    void whoSaysTheColumnsIsBelievedAboutCommas() {
        String text = "x,y,z\n" + gentle("%.0f,%.0f,%.0f,7,8,9");
        assertThat(read(text, PointRequest.asTheCourse(), "x,y,z").read()).isEqualTo(POINTS);
    }

    @Test
    void tenLinesThatDoNotReadAreToldOneByOneAlone() {
        GreenPoints points = read(gentle("%.3f,%.3f,%.4f") + "no\n".repeat(10));
        assertThat(points.findings())
                .filteredOn(finding -> finding.where().equals(Where.file()))
                .isEmpty();
    }

    @Test
    void theGreatestClassIs32767() {
        GreenPoints points = read("x,y,z,class\n" + gentle("%.3f,%.3f,%.4f,32767") + "1,2,3,32768\n");
        assertThat(points.byClass()).containsOnlyKeys(32767);
        assertThat(points.findings())
                .filteredOn(finding -> finding.kind() == FindingKind.LINE_NOT_READABLE)
                .extracting(Finding::where)
                .containsExactly(Where.line(POINTS + 2));
    }

    @Test
    void aClassThatIsSaidAndNotThereLeavesNoLineReadable() {
        Finding finding = InventedMap.troubleOf(() -> read("1,2,3\n", PointRequest.asTheCourse(), "x,y,z,class"));
        assertThat(finding.kind()).isEqualTo(FindingKind.LINE_NOT_READABLE);
        assertThat(finding.where()).isEqualTo(Where.line(1));
    }
}
