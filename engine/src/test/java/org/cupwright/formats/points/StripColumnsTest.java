package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.formats.points.InventedPoints.gentle;
import static org.cupwright.formats.points.InventedPoints.read;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.cupwright.green.SurveyPoints;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** In which strips the points of a file were taken. */
class StripColumnsTest {
    private static SurveyPoints points(String text) {
        return read(text).find("1").orElseThrow();
    }

    private static int[] strips(SurveyPoints points) {
        return IntStream.range(0, points.count()).map(points::strip).distinct().toArray();
    }

    private static SurveyPoints told(double[] strips, double[] times) {
        StripColumns columns = new StripColumns();
        for (int i = 0; i < strips.length; i++) {
            columns.add(strips[i], times[i]);
        }
        double[] zero = new double[strips.length];
        return columns.told(SurveyPoints.scattered(zero, zero, zero));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "strip",
                "Strip No",
                "line",
                "flightline",
                "Flight_Line",
                "point_source_id",
                "PointSourceId",
                "pt_src_id",
                "setup",
                "set-up"
            })
    void aColumnOfStripsIsReadByItsName(String name) {
        String higher = InventedPoints.lines("%.3f,%.3f,%.4f,east", (x, y) -> 100.01 + 0.02 * x, 1);
        SurveyPoints points = points("x,y,z," + name + "\n" + gentle("%.3f,%.3f,%.4f,west") + higher);
        assertThat(points.hasStrips()).isTrue();
        assertThat(strips(points)).containsExactly(0, 1);
    }

    @Test
    void withoutSuchAColumnThereAreNone() {
        assertThat(points("x,y,z,intensity\n" + gentle("%.3f,%.3f,%.4f,7")).hasStrips())
                .isFalse();
    }

    @Test
    void columnsThatWereSaidMayHaveStripsToo() {
        SurveyPoints points = read(gentle("%.3f,%.3f,%.4f,9"), PointRequest.asTheCourse(), "x,y,z,strip")
                .find("1")
                .orElseThrow();
        assertThat(strips(points)).containsExactly(0);
    }

    @Test
    void aPointOfNoStripIsKept() {
        SurveyPoints points = points("x,y,z,strip\n" + gentle("%.3f,%.3f,%.4f,"));
        assertThat(points.hasStrips()).isTrue();
        assertThat(strips(points)).containsExactly(SurveyPoints.NO_STRIP);
    }

    @ParameterizedTest
    @ValueSource(strings = {"time", "gps_time", "GPS Time", "GpsTime"})
    void fromGapsOfTheTimeStripsFollow(String name) {
        String text = "x,y,z," + name + "\n" + gentle("%.3f,%.3f,%.4f,1000.5");
        assertThat(strips(points(text))).containsExactly(0);
        double none = Double.NaN;
        double[] unnamed = {none, none, none, none, none};
        SurveyPoints points = told(unnamed, new double[] {500, 10, 520, 40, none});
        assertThat(IntStream.range(0, 5).map(points::strip)).containsExactly(1, 0, 1, 0, SurveyPoints.NO_STRIP);
    }

    @Test
    void whereAllHaveOneNumberTheTimeTellsStripsApart() {
        double[] time = {0, 1, 100, 101};
        assertThat(strips(told(new double[] {0, 0, 0, 0}, time))).containsExactly(0, 1);
        assertThat(strips(told(new double[] {4, 5, 5, 4}, time))).containsExactly(4, 5);
    }

    @Test
    void whatCountsSomethingElseIsNoStrip() {
        double[] each = IntStream.range(0, 200).asDoubleStream().toArray();
        double[] never = new double[200];
        Arrays.fill(never, Double.NaN);
        assertThat(strips(told(each, never))).containsExactly(SurveyPoints.NO_STRIP);
    }

    @Test
    void theSameNameInTwoFilesIsOneStrip() {
        StripNames names = new StripNames();
        assertThat(names.number("12")).isEqualTo(names.number(" 12 "));
        assertThat(names.number("13")).isEqualTo(1);
        assertThat(names.number("")).isNaN();
        assertThat(names.number("n".repeat(200))).isNaN();
        IntStream.range(0, 20_000).forEach(i -> names.number("p" + i));
        assertThat(names.number("another")).isNaN();
        assertThat(names.number("12")).isZero();
    }

    @Test
    void pointsThatStandTwiceTakeTheirStripWithThem() {
        String text = "x,y,z,strip\n" + gentle("%.3f,%.3f,%.4f,1") + gentle("%.3f,%.3f,%.4f,2");
        assertThat(strips(points(text))).containsExactly(0);
    }
}
