package org.cupwright.app.desk.entry.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.CrewNote;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.cupchange.PayloadKinds;
import org.cupwright.formats.table.CellText;
import org.cupwright.formats.table.CsvText;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Reading;
import org.cupwright.formats.table.Table;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Entries of every kind are read back from their table as they were. */
class EntryTableTest {
    /** What makes trouble in tables: separators, quotation marks, line ends, formulas, blanks, apostrophes. */
    private static final List<String> PIECES = List.of(
            "=", "+", "-", "@", "'", "\"", ",", ";", "\n", "\r\n", "\t", " ", "#", "a", "\u00e9", "\u5148", "=1+2");

    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

    private static final Outline GREEN = new Outline((Polygon) new Area.Around(new MapPoint(10, 12), 12).toGeometry());

    /** In a zone whose clocks are put back at night. */
    private static final Course COURSE = new Course(
            MadeFacts.COURSE,
            "Invented",
            new CourseFrame(25832, ZONE),
            Stream.of("1", "2", "3").map(hole -> Hole.of(hole, GREEN)).toList());

    private List<Fact> there(String kind, List<Fact> facts) throws IOException {
        EntryForm form = EntryForm.ofKind(kind);
        List<List<String>> lines = new ArrayList<>();
        EntryColumns columns = EntryColumns.of(form);
        lines.add(columns.header());
        facts.forEach(fact -> lines.add(ExportTable.cells(form, fact, ZONE)));
        byte[] file = CsvText.write(lines).getBytes(StandardCharsets.UTF_8);
        Table table = Table.of(new ByteArrayInputStream(file));
        Layout layout = columns.in(table);
        assertThat(layout.unused()).isEmpty();
        TableEntry entries = new TableEntry(columns, COURSE, Policy.defaults(), "other", Instant.EPOCH);
        Reading<Fact> reading = table.read(line -> entries.of(layout.row(line)).fact());
        assertThat(reading.notRead()).isEmpty();
        return reading.values();
    }

    @Test
    void everyKindIsReadBackAsItWas() throws IOException {
        Random random = new Random(Suite.seed());
        Map<String, List<Fact>> byKind = new TreeMap<>();
        for (Fact fact : MadeFacts.sequence(random, Suite.count("facts in tables", 10_000, 2_000))) {
            byKind.computeIfAbsent(fact.payload().kind(), kind -> new ArrayList<>())
                    .add(fact);
        }
        List<String> all = new ArrayList<>(PayloadKinds.all().keySet());
        all.remove("correction");
        assertThat(byKind.keySet()).containsExactlyElementsOf(all);
        for (Map.Entry<String, List<Fact>> kind : byKind.entrySet()) {
            assertThat(there(kind.getKey(), kind.getValue()))
                    .as("seed %d, %s", Suite.seed(), kind.getKey())
                    .isEqualTo(kind.getValue());
        }
    }

    @Test
    void textsOfAnyKindSurvive() throws IOException {
        Random random = new Random(Suite.seed());
        Map<String, List<Fact>> facts = new HashMap<>();
        for (int i = Suite.count("texts in tables", 5_000, 500); i > 0; i--) {
            Fact note = MadeFacts.on("2026-06-20T05:00:00Z", "", new CrewNote.NoteToNext("x" + text(random)));
            Fact why = MadeFacts.on(
                    "2026-10-25T01:30:00Z",
                    "2",
                    new CupWork.HoleMovedInPlay(new MapPoint(random.nextDouble(), -3e-7), "=x", 2, text(random)));
            Fact left =
                    MadeFacts.on("2026-06-20T05:00:00.001Z", "2", new CupWork.LeftInOldHole(Optional.of(text(random))));
            Fact tools = MadeFacts.on(
                    "2026-06-20T05:00:00Z", "", new CrewNote.ToolsChecked(List.of(text(random), text(random))));
            for (Fact fact : List.of(note, why, left, tools)) {
                facts.computeIfAbsent(fact.payload().kind(), kind -> new ArrayList<>())
                        .add(fact);
            }
        }
        for (Map.Entry<String, List<Fact>> kind : facts.entrySet()) {
            assertThat(there(kind.getKey(), kind.getValue()))
                    .as("seed %d", Suite.seed())
                    .isEqualTo(kind.getValue());
        }
    }

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(6); i > 0; i--) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }

    @Test
    void drawnGroundAndWhatIsNotKnownSurvive() throws IOException {
        Area drawn = new Area.Drawn(List.of(new MapPoint(0.25, 1), new MapPoint(3, 1.125), new MapPoint(2, 7)));
        Fact marked = MadeFacts.on(
                "2026-06-20T05:00:00Z",
                "1",
                new GroundNote.GroundMarked(
                        GroundNote.GroundUse.SAVED,
                        drawn,
                        GroundNote.GroundReason.EVENT,
                        LocalDate.of(2026, 6, 20),
                        Optional.empty()));
        Fact check = MadeFacts.on(
                "2026-06-20T05:00:00Z",
                "1",
                new CupWork.SpotCheck(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(-2.5)));
        assertThat(there("groundMarked", List.of(marked))).containsExactly(marked);
        assertThat(there("spotCheck", List.of(check))).containsExactly(check);
    }

    @Test
    void noTextBeginsAsAFormulaDoes() {
        for (String text : List.of("=1+1", "+1", "-1", "@x", "'=1", "''=1")) {
            assertThat(CellText.guarded(text)).startsWith("'").isNotEqualTo(text);
            assertThat(CellText.plain(CellText.guarded(text))).isEqualTo(text);
        }
        assertThat(CellText.guarded("it's")).isEqualTo("it's");
        assertThat(CellText.guarded("'t is wet")).isEqualTo("'t is wet");
    }
}
