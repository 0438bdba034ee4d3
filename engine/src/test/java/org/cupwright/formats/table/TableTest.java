package org.cupwright.formats.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.InventedMap;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented tables. */
class TableTest {
    private static final List<Unit> LENGTHS = List.of(new Unit("m", 0, 1), new Unit("ft", 0, 0.3048));
    private static final List<Unit> HEATS = List.of(new Unit("C", 0, 1), new Unit("F", 32, 5.0 / 9));
    private static final Column<LocalDate> DAY =
            Column.day("date").called("day").needed();
    private static final Column<String> NOTE = Column.text("note");
    private static final Column<Double> REACH = Column.number("reach")
            .in(LENGTHS)
            .without(List.of("-", "na"))
            .otherwise(text -> said("other", text))
            .only(reach -> reach >= 0 && reach <= 100, text -> said("bounds", text));
    private static final Column<Double> HEAT = Column.number("heat").in(HEATS);
    private static final Column<Integer> PAIRS = Column.of("pairs", (text, writing) -> {
        if (!text.matches("[0-9]{1,4}")) {
            throw said("whole", text);
        }
        return Integer.parseInt(text);
    });
    private static final List<Column<?>> COLUMNS = List.of(DAY, NOTE, REACH, HEAT, PAIRS);

    private static Problem said(String what, String text) {
        return Problem.of(Message.of("invented." + what, new Name(text)), Message.of("invented.try"));
    }

    private static Table table(String text) {
        try {
            return Table.of(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Table bounded(byte[] text, long maxBytes) {
        try {
            return Table.ofLines(new ByteArrayInputStream(text), maxBytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static <T> Reading<Optional<T>> read(String text, Column<T> column) {
        Table table = table(text);
        Layout layout = Layout.of(table, COLUMNS, Map.of()).complete();
        return table.read(line -> layout.row(line).find(column));
    }

    private static String whyNot(String text) {
        Reading<Optional<String>> reading = read(text, NOTE);
        assertThat(reading.notRead()).hasSize(1);
        NotReadLine line = reading.notRead().get(0);
        return line.number() + " " + line.why().key() + " " + line.tryThis().key();
    }

    @Test
    void everyTypeReads() {
        String table = "Date;Note;Reach;Heat;Pairs\n31.5.2026;\"a; \"\"b\"\"\nc\";12,5;-3;17\n";
        assertThat(read(table, DAY).values()).containsExactly(Optional.of(LocalDate.of(2026, 5, 31)));
        assertThat(read(table, NOTE).values()).containsExactly(Optional.of("a; \"b\"\nc"));
        assertThat(read(table, REACH).values()).containsExactly(Optional.of(12.5));
        assertThat(read(table, HEAT).values()).containsExactly(Optional.of(-3.0));
        assertThat(read(table, PAIRS).values()).containsExactly(Optional.of(17));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"date,reach\n2026-05-31,%s\n", "date\treach\n2026-05-31\t%s\n", "date reach\n2026-05-31 %s\n"})
    void separatorsAreFoundInTheFirstLine(String table) {
        assertThat(read(String.format(table, "7.5"), REACH).values()).containsExactly(Optional.of(7.5));
    }

    @ParameterizedTest
    @CsvSource({
        "reach (ft), 10, 3.048",
        "reach [m], 10, 10",
        "reach_ft, 10, 3.048",
        "Reach, 10, 10",
    })
    void aUnitInTheNameCounts(String name, String written, double metres) {
        assertThat(read("day;" + name + "\n2026-05-31;" + written + "\n", REACH).values())
                .containsExactly(Optional.of(metres));
    }

    @Test
    void aUnitMayBeSetAndHasItsZeroElsewhere() {
        Table table = table("date,heat\n2026-05-31,50\n");
        Layout layout = Layout.of(table, COLUMNS, Map.of());
        assertThat(layout.unitNames()).isEqualTo(Map.of("heat", "C"));
        layout.set(HEAT, HEAT.unit("f").orElseThrow());
        assertThat(layout.unitNames()).isEqualTo(Map.of("heat", "F"));
        assertThat(layout.row(table.lines().get(0)).find(HEAT)).contains(10.0);
    }

    @Test
    void aNameThatIsSaidGoesBeforeTheUsualOnes() {
        Table table = table("date,reach,far\n2026-05-31,1,2\n");
        Layout layout = Layout.of(table, COLUMNS, Map.of("reach", "Far"));
        assertThat(layout.row(table.lines().get(0)).find(REACH)).contains(2.0);
        assertThat(layout.has(NOTE)).isFalse();
        assertThat(layout.row(table.lines().get(0)).text(NOTE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"wide, invented.other", "101, invented.bounds", "-1, invented.bounds", "NaN, invented.other"})
    void aValueThatIsNoneOrBeyondTheBoundsIsTold(String written, String why) {
        Reading<Optional<Double>> reading = read("date,reach\n2026-05-31," + written + "\n2026-06-01,1\n", REACH);
        assertThat(reading.values()).containsExactly(Optional.of(1.0));
        NotReadLine line = reading.notRead().get(0);
        assertThat(line.number()).isEqualTo(2);
        assertThat(line.text()).isEqualTo("2026-05-31," + written);
        assertThat(line.why()).isEqualTo(Message.of(why, new Name(written)));
    }

    @Test
    void typesHaveWordsOfTheirOwn() {
        assertThat(read("date,heat\n2026-05-31,x\n", HEAT)
                        .notRead()
                        .get(0)
                        .tryThis()
                        .key())
                .isEqualTo("try.log.number");
        assertThat(read("date\n2026-02-30\n", DAY).notRead().get(0).why().key()).isEqualTo("day.noSuch");
        assertThat(read("date,pairs\n2026-05-31,1.5\n", PAIRS)
                        .notRead()
                        .get(0)
                        .why()
                        .key())
                .isEqualTo("invented.whole");
    }

    @Test
    void whatStandsForNothingIsNothing() {
        assertThat(read("date,reach\n2026-05-31,\n2026-06-01,-\n2026-06-02,NA\n2026-06-03\n", REACH)
                        .values())
                .containsOnly(Optional.empty())
                .hasSize(4);
    }

    @Test
    void aColumnThatMustBeThereIsMissed() {
        Finding finding = InventedMap.troubleOf(() -> read("# invented\nreach,heat\n1,2\n", REACH));
        assertThat(finding.kind()).isEqualTo(FindingKind.COLUMN_MISSING);
        assertThat(finding.where()).isEqualTo(Where.line(2));
        assertThat(finding.tryThis().arguments()).containsExactly(new Name("date"));
    }

    @Test
    void aFileCutOffTellsItsLastLine() {
        assertThat(whyNot("date,note,reach\n2026-05-31,a,1\n2026-06-01,b"))
                .isEqualTo("3 table.cutOff table.try.cutOff");
        Reading<Optional<String>> whole = read("date,note\n2026-05-31,a\n2026-06-01,b", NOTE);
        assertThat(whole.values()).hasSize(2);
        assertThat(whole.unended()).contains("2026-06-01,b");
        assertThat(read("date,note\n2026-05-31,a\n", NOTE).unended()).isEmpty();
    }

    @Test
    void aQuotationMarkThatIsNotClosedIsTold() {
        assertThat(whyNot("date,note\n2026-05-31,a\n2026-06-01,\"b\n2026-06-02,c\n"))
                .isEqualTo("3 table.not.unclosed table.try.unclosed");
    }

    @Test
    void fieldsBeyondTheFirstLineAreTold() {
        assertThat(whyNot("date,reach\n2026-05-31,1,5\n")).isEqualTo("2 table.fields table.try.more");
        assertThat(whyNot("date reach note\n2026-05-31 1\n")).isEqualTo("2 table.fields table.try.fewer");
        assertThat(read("date,reach\n2026-05-31,1,,\n", REACH).values())
                .as("empty ones say nothing")
                .containsExactly(Optional.of(1.0));
    }

    @Test
    void linesOfATableWithoutQuotedLineEndsStandAlone() {
        byte[] text = "date,note\n2026-05-31,\"a, b\n# c\n2026-06-01,d\n".getBytes(StandardCharsets.UTF_8);
        Table table = bounded(text, text.length);
        assertThat(table.separator()).isEqualTo(Separator.COMMA);
        assertThat(table.lines()).extracting(Line::number).containsExactly(2L, 4L);
        assertThat(table.lines().get(0).field(1)).isEqualTo("a, b");
        assertThat(InventedMap.troubleOf(() -> bounded(text, text.length - 1)).kind())
                .isEqualTo(FindingKind.FILE_TOO_LARGE);
    }

    @ParameterizedTest
    @CsvSource({"'', EMPTY_FILE", "'# only this\n\n', EMPTY_FILE", "a\0b, NOT_TEXT"})
    void aFileThatIsNoTableIsRefused(String text, FindingKind kind) {
        String file = text.replace("\\n", "\n").replace("\\0", "\0");
        assertThat(InventedMap.troubleOf(() -> table(file)).kind()).isEqualTo(kind);
    }

    @Test
    void daysFarFromAllOthersAreTakenBack() {
        Reading<Optional<LocalDate>> reading = read("date\n2026-05-31\n1926-06-01\n2026-06-02\n", DAY);
        reading.withoutFarDays(Optional::orElseThrow);
        assertThat(reading.values()).hasSize(2);
        assertThat(reading.notRead()).extracting(NotReadLine::number).containsExactly(3L);
    }

    @Test
    void namesMayBeTakenOtherwiseAndWhatBelongsToNothingIsNamed() {
        Table table = table("REA,other,reach\n7,x,8\n");
        Layout layout = Layout.of(
                table,
                COLUMNS,
                name -> name.toLowerCase(Locale.ROOT).startsWith("rea") ? Optional.of("reach") : Optional.empty());
        assertThat(layout.found()).containsExactly(REACH);
        assertThat(layout.unused()).containsExactly("other", "reach");
        assertThat(layout.row(table.lines().get(0)).number(REACH)).hasValue(7);
    }

    @Test
    void aColumnAsksAboutAllThatReadsInIt() {
        Column<Double> far = REACH.asking(values -> values.contains(90.0)
                ? Optional.of(new Question("reach", Message.of("invented.far"), Message.of("invented.try")))
                : Optional.empty());
        for (String last : List.of("90", "900", "89")) {
            Table table = table("date,reach,heat\n2026-05-31,3,1\n2026-06-01," + last + ",2\n");
            Layout layout = Layout.of(table, List.of(DAY, far, HEAT), Map.of());
            Reading<LocalDate> reading =
                    table.read(line -> layout.row(line).find(DAY).orElseThrow());
            assertThat(layout.questions(reading)).as(last).hasSize(last.equals("90") ? 1 : 0);
        }
        Table refused = table("date,reach,heat\n2026-05-31,90,1\n");
        Layout layout = Layout.of(refused, List.of(DAY, far, HEAT), Map.of());
        Reading<LocalDate> none = refused.read(line -> {
            throw said("whole", "90");
        });
        assertThat(layout.questions(none)).isEmpty();
    }

    @Test
    void ofALongCellItsBeginningIsTold() {
        Table table = table("date,note,reach\n2026-05-31,,1\n2026-05-31,," + "7".repeat(5000) + "x\n");
        Layout layout = Layout.of(table, COLUMNS, Map.of());
        Message why = table.read(line -> layout.row(line).find(REACH))
                .notRead()
                .get(0)
                .why();
        assertThat(why).isEqualTo(Message.of("invented.other", new Name("7".repeat(59) + "…")));
    }
}
