package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Plans as calendar and as table, read back by others than who wrote them. */
class PlanFilesIT {
    private static final int DAYS = 4;

    @TempDir
    Path files;

    private InProcess cupwright;
    private JsonNode plan;
    private Path calendar;
    private Path table;

    @BeforeEach
    void planFourDays() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        Result result = cupwright.run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 9));
        assertThat(result.status()).as(result.err()).isZero();
        plan = JsonMapper.shared()
                .readTree(cupwright.run("plan", "--days", DAYS, "--json").out());
        calendar = files.resolve("plan.ics");
        table = files.resolve("plan.csv");
    }

    private Result write(Object... more) {
        List<Object> arguments = new ArrayList<>(
                List.of("sheets", "--days", DAYS, "--out", files.resolve("out"), "--ics", calendar, "--csv", table));
        arguments.addAll(List.of(more));
        return cupwright.run(arguments.toArray());
    }

    /** Content lines by RFC 5545: unfolded, then parted at the first colon; of each event its properties by name. */
    private static List<Map<String, String>> events(Path file) throws IOException {
        String text = Files.readString(file);
        assertThat(text).endsWith("\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        for (String line : text.split("\r\n", -1)) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
        }
        List<Map<String, String>> events = new ArrayList<>();
        Map<String, String> event = new HashMap<>();
        for (String line : text.replace("\r\n ", "").split("\r\n", 0)) {
            int colon = line.indexOf(':');
            String name = line.substring(0, colon);
            String value = line.substring(colon + 1);
            if (name.equals("BEGIN")) {
                event = new HashMap<>();
            } else if (name.equals("END")) {
                if (value.equals("VEVENT")) {
                    events.add(event);
                }
            } else {
                assertThat(event.put(name, value)).as(name + " stands once").isNull();
            }
        }
        return events;
    }

    private static String plain(String text) {
        return text.replace("\\n", "\n").replace("\\,", ",").replace("\\;", ";").replace("\\\\", "\\");
    }

    @Test
    void theCalendarHasADayForEachDayWithEveryHole() throws IOException {
        assertThat(write().status()).isZero();
        List<Map<String, String>> events = events(calendar);
        assertThat(events).hasSize(DAYS);
        for (int i = 0; i < DAYS; i++) {
            JsonNode day = plan.path("days").path(i);
            Map<String, String> event = events.get(i);
            assertThat(event.get("DTSTART;VALUE=DATE"))
                    .isEqualTo(day.path("date").asString().replace("-", ""));
            assertThat(event).containsEntry("STATUS", "TENTATIVE").containsEntry("SEQUENCE", "0");
            assertThat(event).containsEntry("DTSTAMP", "20260620T050000Z").doesNotContainKey("DTEND");
            assertThat(plain(event.get("SUMMARY"))).isEqualTo("Hole locations · draft · made");
            List<String> lines = plain(event.get("DESCRIPTION")).lines().toList();
            assertThat(lines).hasSize(9);
            for (int hole = 0; hole < 9; hole++) {
                assertThat(lines.get(hole)).startsWith(words(day.path("holes").path(hole)));
            }
        }
        assertThat(events.stream().map(event -> event.get("UID")).distinct()).hasSize(DAYS);
    }

    private static String words(JsonNode hole) {
        JsonNode at = hole.path("position");
        String on = at.path("onPaces").asString().replace(".5", "½").replace(".0", "");
        String side = at.path("sidePaces").asString().replace(".5", "½").replace(".0", "");
        String third = at.path("third").asString();
        String lateral = at.path("lateral").asString();
        String area = third.equals("middle") && lateral.equals("centre") ? "middle" : third + " " + lateral;
        return hole.path("hole").asString() + ": " + area + " · " + on + " on · " + side + " from "
                + (at.path("side").asString().equals("L") ? "left" : "right") + " – ";
    }

    /** Calendars know a day again by its name, and that it changed by its sequence number. */
    @Test
    void aDayKeepsItsNameAndCountsItsChanges() throws IOException {
        assertThat(write().status()).isZero();
        byte[] before = Files.readAllBytes(calendar);
        assertThat(write("--replace").status()).isZero();
        assertThat(Files.readAllBytes(calendar)).isEqualTo(before);
        List<Map<String, String>> first = events(calendar);

        assertThat(cupwright
                        .daysLater(1)
                        .run("publish", "--yes", "--date", "2026-06-22")
                        .status())
                .isZero();
        assertThat(write("--replace").status()).isZero();
        List<Map<String, String>> second = events(calendar);
        for (int day = 0; day < DAYS; day++) {
            assertThat(second.get(day).get("UID")).isEqualTo(first.get(day).get("UID"));
            if (day != 2) {
                assertThat(second.get(day)).isEqualTo(first.get(day));
            }
        }
        assertThat(second.get(2))
                .containsEntry("SEQUENCE", "1")
                .containsEntry("DTSTAMP", "20260621T050000Z")
                .containsEntry("STATUS", "CONFIRMED");
    }

    /** A day without a zone is the course's day, wherever the machine stands. */
    @Test
    void whereTheMachineStandsMakesNoDifference() throws IOException {
        assertThat(write().status()).isZero();
        byte[] here = Files.readAllBytes(calendar);
        Clock east = InProcess.CLOCK.withZone(ZoneId.of("Pacific/Kiritimati"));
        cupwright = new InProcess(files.resolve("data"), east);
        assertThat(write("--replace").status()).isZero();
        assertThat(Files.readAllBytes(calendar)).isEqualTo(here);
    }

    @Test
    void theTableSaysWhatThePlanSays() throws IOException {
        assertThat(write().status()).isZero();
        Map<String, NamedCsvRecord> lines = new LinkedHashMap<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(table)) {
            reader.forEach(line -> lines.put(line.getField("date") + " " + line.getField("hole"), line));
        }
        assertThat(lines).hasSize(9 * DAYS);
        for (JsonNode day : plan.path("days")) {
            for (JsonNode hole : day.path("holes")) {
                NamedCsvRecord line = lines.get(
                        day.path("date").asString() + " " + hole.path("hole").asString());
                JsonNode at = hole.path("position");
                assertThat(line.getField("course")).isEqualTo("made");
                assertThat(line.getField("state")).isEqualTo("draft");
                assertThat(line.getField("epsg")).isEqualTo("32626");
                for (String same : List.of("third", "lateral", "side")) {
                    assertThat(line.getField(same)).isEqualTo(at.path(same).asString());
                }
                number(line, "onPaces", at.path("onPaces"));
                number(line, "sidePaces", at.path("sidePaces"));
                number(line, "goodWithinPaces", at.path("goodWithinPaces"));
                number(line, "eastMetres", at.path("east"));
                number(line, "northMetres", at.path("north"));
                assertThat(line.getField("verdict"))
                        .isEqualTo(hole.path("verdict").asString());
                assertThat(line.getField("setAside")).isEmpty();
                assertThat(words(hole)).isEqualTo(line.getField("hole") + ": " + line.getField("words") + " – ");
                square(line);
            }
        }
    }

    private static void number(NamedCsvRecord line, String column, JsonNode value) {
        assertThat(Double.parseDouble(line.getField(column))).as(column).isEqualTo(value.asDouble());
    }

    /** The made greens are squares of 22 m whose line of play runs north: metres on and aside follow from the map. */
    private static void square(NamedCsvRecord line) {
        double east = Double.parseDouble(line.getField("eastMetres"));
        double north = Double.parseDouble(line.getField("northMetres"));
        double on = Double.parseDouble(line.getField("onMetres"));
        double side = Double.parseDouble(line.getField("sideMetres"));
        assertThat(on).isCloseTo(north - 4_400_000, org.assertj.core.data.Offset.offset(0.001));
        double fromLeft = (east - 500_000) % 100;
        double nearer = line.getField("side").equals("L") ? fromLeft : 22 - fromLeft;
        assertThat(side).isCloseTo(nearer, org.assertj.core.data.Offset.offset(0.001));
    }

    /** A spreadsheet would work out what begins like a formula. */
    @Test
    void namesThatBeginLikeFormulasAreGuarded() throws IOException {
        String formula = "=HYPERLINK(\"http://made.example\",\"x\")";
        Result asked = cupwright.run("plan", "--hole", 3, "--on", 12, "--side", "L8", "--person", formula);
        assertThat(asked.status()).as(asked.err()).isZero();
        assertThat(write().status()).isZero();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(table)) {
            NamedCsvRecord line = reader.stream()
                    .filter(found -> !found.getField("askedBy").isEmpty())
                    .findFirst()
                    .orElseThrow();
            assertThat(line.getField("hole")).isEqualTo("3");
            assertThat(line.getField("askedBy")).isEqualTo("'" + formula);
        }
    }

    @Test
    void filesThatAreThereStay_andAllAreWrittenOrNone() throws IOException {
        Files.writeString(table, "mine");
        Result refused = write();
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("There is a file of that name already", "--replace");
        assertThat(table).hasContent("mine");
        assertThat(calendar).doesNotExist();
        assertThat(files.resolve("out")).doesNotExist();

        Path among = files.resolve("data").resolve("plan.ics");
        Result data = cupwright.run("sheets", "--days", DAYS, "--out", files.resolve("out"), "--ics", among);
        assertThat(data.status()).isEqualTo(1);
        assertThat(data.err()).contains("data folder");
        assertThat(files.resolve("out")).doesNotExist();

        assertThat(cupwright
                        .run("sheets", "--days", DAYS, "--out", files, "--ics", calendar, "--csv", calendar)
                        .status())
                .isEqualTo(2);
        assertThat(cupwright
                        .run("sheets", "--days", DAYS, "--out", files, "--csv", files.resolve("weeks.pdf"))
                        .status())
                .isEqualTo(2);
    }

    @Test
    void theDaysPaperTakesThemAlongToo() throws IOException {
        Path out = files.resolve("day");
        Result day = cupwright.run("sheets", "--out", out, "--ics", out.resolve("day.ics"));
        assertThat(day.status()).as(day.err()).isZero();
        assertThat(out.toFile().list()).containsExactlyInAnyOrder("hole-locations.pdf", "changers-card.pdf", "day.ics");
        assertThat(events(out.resolve("day.ics"))).hasSize(1);
        assertThat(LocalDate.parse(plan.path("days").path(0).path("date").asString()))
                .isEqualTo(LocalDate.of(2026, 6, 20));
    }
}
