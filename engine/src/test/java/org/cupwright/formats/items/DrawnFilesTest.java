package org.cupwright.formats.items;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.InventedMap;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawnFilesTest {
    private static final double PACE_METRES = 0.914;
    private static final String HEADER = "hole,kind,on,side,radius,reason,person,date\n";
    private static final Course COURSE = new InventedMap()
            .green(0, 0, 12, "")
            .line(0, -300, 0, 0, ",\"ref\":\"1\"")
            .green(400, 0, 12, ",\"ref\":\"2;11\"")
            .line(400, -300, 400, 0, ",\"ref\":\"2\"")
            .read()
            .course();

    private static ReadDrawn csv(String text) {
        try {
            return DrawnCsv.read(InventedMap.bytes(text), COURSE, OnConvention.ALONG_CHORD, PACE_METRES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReadDrawn json(String text) {
        try {
            return DrawnGeoJson.read(InventedMap.bytes(text), COURSE, PACE_METRES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReadDrawn point(double east, String tags) {
        return json(new InventedMap()
                .feature("Point", InventedMap.position(east, 0), tags)
                .json());
    }

    private static Finding only(ReadDrawn read) {
        assertThat(read.items()).isEmpty();
        assertThat(read.findings()).hasSize(1);
        return read.findings().get(0);
    }

    @Test
    void aListSaysWhatWhereWhoAndWhen() {
        ReadDrawn read = csv(HEADER + "1,bad,6,L8,2,\"wet, always\",Invented Person,2026-05-31\n1,usual,13,R13,,,,\n");
        assertThat(read.findings()).isEmpty();
        ReadDrawn.Item bad = read.items().get(0);
        assertThat(bad.word().kind()).isEqualTo(Kind.BAD);
        assertThat(bad.word().reason()).contains("wet, always");
        assertThat(bad.word().person()).contains("Invented Person");
        assertThat(bad.word().date()).contains(LocalDate.of(2026, 5, 31));
        assertThat(bad.place().getArea()).isCloseTo(Math.PI * 4 * PACE_METRES * PACE_METRES, within(0.03));
        ReadDrawn.Item usual = read.items().get(1);
        assertThat(usual.holes()).containsExactly("1");
        assertThat(MapPoint.of(usual.place().getCoordinate())
                        .distanceMetres(COURSE.find("1").orElseThrow().green().centroid()))
                .isLessThan(0.3);
    }

    @Test
    void aMapSaysTheSame() {
        ReadDrawn read = json(new InventedMap()
                .area(3, 2, 2.5, "\"kind\":\"bad\",\"reason\":\"wet\",\"id\":\"wet-1\"")
                .feature("Point", InventedMap.position(0, 0), "\"kind\":\"usual\",\"hole\":1")
                .feature("Point", InventedMap.position(401, 0), "\"kind\":\"Good\",\"radiusMetres\":2.5")
                .json());
        assertThat(read.findings()).isEmpty();
        assertThat(read.items().get(0).id()).contains("wet-1");
        assertThat(read.items().get(1).word().kind()).isEqualTo(Kind.USUAL);
        assertThat(read.items().get(2).holes()).containsExactly("2", "11");
        assertThat(read.items().get(2).place().getArea()).isCloseTo(Math.PI * 6.25, within(0.05));
    }

    @Test
    void areasHaveTheCoursesOwnNumbers_andNothingElseHas() {
        String header = "hole,kind,on,side,radius,area\n";
        ReadDrawn read = csv(header + "1,area,6,L8,2,3\n2,area,6,L8,2,B\n1,bad,6,L8,2,3\n");
        assertThat(read.findings()).isEmpty();
        assertThat(read.items())
                .extracting(item -> item.word().area().orElse("–"))
                .containsExactly("3", "B", "–");
        assertThat(read.items().get(0).word().kind()).isEqualTo(Kind.AREA);
        assertThat(read.items().get(1).holes()).containsExactly("2", "11");
        ReadDrawn drawn = json(new InventedMap()
                .area(3, 2, 2.5, "\"kind\":\"area\",\"area\":\"12\"")
                .json());
        assertThat(drawn.items().get(0).word().area()).contains("12");
        for (String wrong : new String[] {"", "123", "a b", "é"}) {
            assertThat(only(csv(header + "1,area,6,L8,2," + wrong + "\n")).kind())
                    .as(wrong)
                    .isEqualTo(FindingKind.DRAWN_AREA);
        }
        assertThat(only(csv(header + "1,area,6,L8,,3\n")).kind()).isEqualTo(FindingKind.DRAWN_NEEDS_RADIUS);
    }

    @ParameterizedTest
    @CsvSource({
        "'1,good,6,L8,,,,', DRAWN_NEEDS_RADIUS",
        "'1,good,6,L8,wide,,,', DRAWN_NOT_A_NUMBER",
        "'1,good,1e1,L8,3,,,', DRAWN_NOT_A_NUMBER",
        "'1,good,6,L8,0,,,', DRAWN_NOT_A_NUMBER",
        "'1,good,6,L8,900,,,', DRAWN_NOT_A_NUMBER",
        "'1,fine,6,L8,2,,,', DRAWN_KIND_UNKNOWN",
        "'1,usual,60,L8,,,,', DRAWN_NO_SUCH_PLACE",
        "'1,usual,6,M8,,,,', DRAWN_NOT_A_NUMBER",
        "'77,usual,6,L8,,,,', HOLE_UNKNOWN",
        "'1,usual,6,L8,,,,31 May', DATE_NOT_READABLE",
        "'1,usual,6,L8', LINE_CUT_SHORT",
    })
    void aLineThatDoesNotReadIsTold(String line, FindingKind kind) {
        Finding finding = only(csv(HEADER + "# invented\n" + line + "\n"));
        assertThat(finding.kind()).isEqualTo(kind);
        assertThat(finding.where()).isEqualTo(Where.line(3));
        assertThat(finding.tryThis().key()).isEqualTo(kind.tryKey());
    }

    @ParameterizedTest
    @CsvSource({
        "0, '\"kind\":\"fine\"', DRAWN_KIND_UNKNOWN",
        "0, '', DRAWN_KIND_UNKNOWN",
        "0, '\"kind\":\"bad\"', DRAWN_NEEDS_RADIUS",
        "0, '\"kind\":\"bad\",\"radius\":\"-2\"', DRAWN_NOT_A_NUMBER",
        "20, '\"kind\":\"usual\"', DRAWN_OFF_GREEN",
        "0, '\"kind\":\"usual\",\"hole\":\"2\"', DRAWN_OFF_GREEN",
        "0, '\"kind\":\"usual\",\"hole\":\"9\"', HOLE_UNKNOWN",
        "0, '\"kind\":\"usual\",\"id\":\"my spot\"', DRAWN_ID",
        "0, '\"kind\":\"usual\",\"date\":\"2026-13-01\"', DATE_NOT_READABLE",
    })
    void aFeatureThatDoesNotReadIsTold(double east, String tags, FindingKind kind) {
        Finding finding = only(point(east, tags));
        assertThat(finding.kind()).isEqualTo(kind);
        assertThat(finding.where().key()).isEqualTo("survey.where.feature");
    }

    @Test
    void anAreaThatCrossesItselfIsTold() {
        String bow = "[["
                + String.join(
                        ",",
                        InventedMap.position(0, 0),
                        InventedMap.position(4, 4),
                        InventedMap.position(4, 0),
                        InventedMap.position(0, 4),
                        InventedMap.position(0, 0))
                + "]]";
        Finding finding = only(json(
                new InventedMap().feature("Polygon", bow, "\"kind\":\"bad\"").json()));
        assertThat(finding.kind()).isEqualTo(FindingKind.DRAWN_CROSSES_ITSELF);
        assertThat(finding.place()).isPresent();
    }

    @Test
    void aUsualSpotIsNoArea() {
        ReadDrawn read =
                json(new InventedMap().area(0, 0, 2, "\"kind\":\"usual\"").json());
        assertThat(only(read).kind()).isEqualTo(FindingKind.DRAWN_SHAPE);
        assertThat(only(read).value()).isEqualTo(new Message.Name("Polygon"));
    }

    @Test
    void halfAFileIsNoFile() {
        String whole = new InventedMap().area(0, 0, 2, "\"kind\":\"bad\"").json();
        Finding half = InventedMap.troubleOf(() -> json(whole.substring(0, whole.length() / 2)));
        assertThat(half.kind()).isEqualTo(FindingKind.NOT_READABLE);
        List<Runnable> without = List.of(() -> csv(""), () -> csv("hole,on,side\n1,6,L8\n"), () -> csv("hole,kind\n"));
        assertThat(without.stream().map(InventedMap::troubleOf).map(Finding::kind))
                .containsExactly(FindingKind.EMPTY_FILE, FindingKind.COLUMN_MISSING, FindingKind.COLUMN_MISSING);
    }
}
