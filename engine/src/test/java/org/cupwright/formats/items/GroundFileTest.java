package org.cupwright.formats.items;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import org.cupwright.course.Course;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.InventedMap;
import org.cupwright.green.GroundItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroundFileTest {
    private static final Course COURSE = new InventedMap()
            .green(0, 0, 12, ",\"ref\":\"1\"")
            .green(400, 0, 12, ",\"ref\":\"2;11\"")
            .read()
            .course();

    private static GroundItems read(String json) {
        try {
            return GroundFile.read(InventedMap.bytes(json), COURSE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static GroundItems point(double east, String tags) {
        return read(new InventedMap()
                .feature("Point", InventedMap.position(east, 0), tags)
                .json());
    }

    @Test
    void readsPointsAndAreasWithTheirDays() {
        GroundItems items = read(new InventedMap()
                .feature("Point", InventedMap.position(3, 2), "\"kind\":\"oldHole\",\"since\":\"2026-05-01\"")
                .area(0, 0, 2.5, "\"kind\":\"saved\",\"hole\":\"1\",\"until\":\"2026-06-30\"")
                .json());
        assertThat(items.findings()).isEmpty();
        assertThat(items.of("1"))
                .extracting(GroundItem::kind)
                .containsExactly(GroundItem.Kind.OLD_HOLE, GroundItem.Kind.SAVED);
        assertThat(items.of("1").get(0).since()).contains(LocalDate.of(2026, 5, 1));
        assertThat(items.of("1").get(1).until()).contains(LocalDate.of(2026, 6, 30));
    }

    @Test
    void givesBothHolesOfAGreenWhatLiesOnIt() {
        GroundItems items = point(402, "\"kind\":\"plug\"");
        assertThat(items.byHole()).containsOnlyKeys("2", "11");
        assertThat(items.of("1")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "0 | \"kind\":\"gopher\" | KIND_UNKNOWN",
                "0 | \"note\":\"x\" | KIND_UNKNOWN",
                "0 | \"kind\":\"saved\" | WRONG_SHAPE",
                "0 | \"kind\":\"plug\",\"since\":\"31.5.2026\" | DATE_NOT_READABLE",
                "0 | \"kind\":\"plug\",\"since\":\"2026-06-02\",\"until\":\"2026-06-01\" | DATE_NOT_READABLE",
                "0 | \"kind\":\"plug\",\"hole\":\"2\" | NOT_ON_A_GREEN",
                "200 | \"kind\":\"plug\" | NOT_ON_A_GREEN",
                "0 | \"kind\":\"plug\",\"hole\":\"7\" | HOLE_UNKNOWN"
            })
    void tellsWhatItLeavesOut(double east, String tags, FindingKind kind) {
        GroundItems items = point(east, tags);
        assertThat(items.byHole()).isEmpty();
        assertThat(items.findings()).extracting(Finding::kind).containsExactly(kind);
    }

    @Test
    void tellsAnAreaThatCrossesItself() {
        String bow = "[[[-30.5,40],[-30.49998,40.00002],[-30.49998,40],[-30.5,40.00002],[-30.5,40]]]";
        GroundItems items = read(new InventedMap()
                .feature("Polygon", bow, "\"kind\":\"outOfUse\"")
                .json());
        assertThat(items.findings()).extracting(Finding::kind).containsExactly(FindingKind.WRONG_SHAPE);
    }

    @Test
    void saysWhenItIsNoGeoJson() {
        assertThat(InventedMap.troubleOf(() -> read("kind,hole")).kind()).isEqualTo(FindingKind.NOT_READABLE);
    }
}
