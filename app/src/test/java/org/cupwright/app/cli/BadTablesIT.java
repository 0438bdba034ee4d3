package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Invented tables, spoilt at random: exactly the lines that were spoilt are refused, each with its reason, the rest is
 * offered in whichever way the table was saved, nothing is kept before it is wanted, and then the rest is (the course's
 * today is 2026-06-20).
 */
class BadTablesIT {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    @TempDir
    Path files;

    private TableDesk desk;
    private InProcess cupwright;

    @BeforeEach
    void aCourse() throws IOException {
        desk = new TableDesk(files, 2);
        cupwright = desk.cupwright();
    }

    /** A line spoilt, and what the reason says of it. */
    private record Spoilt(String line, String reason) {}

    /** A way to spoil a line, given its fields and the good line before it. */
    private interface Spoiling {
        Spoilt of(String[] fields, String before);
    }

    private static Spoilt with(String[] fields, int place, String value, String reason) {
        String[] other = fields.clone();
        other[place] = value;
        return new Spoilt(String.join("|", other), reason);
    }

    private static final List<Spoiling> ANY = List.of(
            (fields, before) -> with(fields, 0, "2026-06-31", "There is no day 2026-06-31: that month has 30 days."),
            (fields, before) -> with(fields, 0, "29.2.2026", "There is no day 29.2.2026: that month has 28 days."),
            (fields, before) -> with(fields, 0, "05/31-2026", "\"05/31-2026\" is not a day."),
            (fields, before) -> with(fields, 0, "", ""),
            (fields, before) -> with(fields, 0, yearsAgo(fields[0]), "more than a year from the other days"),
            (fields, before) -> with(fields, 0, longAgo(fields[0]), "is not among the days that can be spoken of"),
            (fields, before) -> with(fields, 0, "2062-03-01", "2062-03-01"),
            (fields, before) -> new Spoilt(String.join("|", fields) + "|7", "The line has 5 fields"),
            (fields, before) -> new Spoilt(before, "stands in the file"));

    /** Some year of which there may well be a notebook. */
    private static String yearsAgo(String day) {
        LocalDate date = LocalDate.parse(day);
        return date.withYear(1990 + date.getDayOfYear() % 34).toString();
    }

    /** Some year of the last century, another for each day. */
    private static String longAgo(String day) {
        return LocalDate.parse(day)
                .withYear(1900 + 2 * LocalDate.parse(day).getDayOfYear())
                .toString();
    }

    private static final List<Spoiling> WEATHER = List.of(
            (fields, before) -> with(fields, 1, "3", "The lowest temperature, 8.5, is above the highest."),
            (fields, before) -> with(fields, 2, "71.2", "is above the highest"),
            (fields, before) -> with(fields, 3, "-0.2", "Rain cannot be negative"),
            (fields, before) -> with(fields, 3, "a lot", "\"a lot\" is not a number."),
            (fields, before) -> with(fields, 1, "", "No temperature stands under tmax."),
            (fields, before) -> with(fields, 1, "NaN", "No temperature stands under tmax."),
            (fields, before) -> with(fields, 1, "1e9", "cannot be"));

    private static final List<Spoiling> NOTEBOOK = List.of(
            (fields, before) -> with(fields, 1, "19", "There is no hole called \"19\""),
            (fields, before) -> with(fields, 2, "60", "No place on the green"),
            (fields, before) -> with(fields, 2, "-4", "is not a number of paces on"),
            (fields, before) -> with(fields, 3, "left", "does not say from which side"),
            (fields, before) -> with(fields, 3, "", "Nothing stands under \"side\""));

    private static String weather(int i) {
        return FIRST.plusDays(i) + "|" + (14.5 + i % 7) + "|8.5|" + (i % 3 == 0 ? "2.5" : i % 5 == 0 ? "T" : "0");
    }

    private static String notebook(int i) {
        return FIRST.plusDays(i) + "|" + (1 + i % 2) + "|" + (8 + i % 3) + ".5|" + (i % 2 == 0 ? "L9.5" : "R 10");
    }

    /** How a table is saved: what stands between fields, decimal signs, line ends, a mark before it all. */
    private record Saved(String separator, boolean decimalComma, String lineEnd, String mark) {
        static Saved at(Random random) {
            String separator = List.of(",", ";", "\t").get(random.nextInt(3));
            return new Saved(
                    separator,
                    !separator.equals(",") && random.nextBoolean(),
                    random.nextBoolean() ? "\r\n" : "\n",
                    random.nextBoolean() ? "\uFEFF" : "");
        }

        String text(String header, List<String> lines) {
            StringBuilder text = new StringBuilder(mark).append(header).append(lineEnd);
            lines.forEach(line -> text.append(decimalComma ? comma(line) : line).append(lineEnd));
            return text.toString().replace("|", separator);
        }

        /** Points between digits become commas, but not those of days. */
        private static String comma(String line) {
            String[] fields = line.split("\\|", -1);
            for (int i = 1; i < fields.length; i++) {
                fields[i] = fields[i].replaceAll("(?<=[0-9])[.](?=[0-9])", ",");
            }
            return String.join("|", fields);
        }
    }

    private JsonNode read(String command, String text, String... more) throws IOException {
        List<Object> line = new ArrayList<>(List.of("--json"));
        line.addAll(List.of(more));
        Result result = desk.read(command, text, line.toArray());
        assertThat(result.status()).as(result.out() + result.err()).isZero();
        return JsonMapper.shared().readTree(result.out());
    }

    private int entries() {
        Result list = cupwright.run("log", "list", "--from", "1900-01-01", "--to", "2099-01-01", "--json");
        return JsonMapper.shared().readTree(list.out()).path("facts").size();
    }

    private interface Good {
        String line(int i);
    }

    private void spoil(String command, String header, Good good, List<Spoiling> ways, String kept) throws IOException {
        int count = Suite.count("bad tables, " + command, 100, 12);
        Random random = new Random(Suite.seed());
        int before = 0;
        for (int round = 0; round < count; round++) {
            Saved saved = Saved.at(random);
            List<String> lines = new ArrayList<>();
            Map<Integer, String> spoilt = new TreeMap<>();
            int days = 20 + random.nextInt(20);
            for (int i = 0; i < days; i++) {
                String line = good.line(i);
                if (i > 0 && random.nextInt(5) == 0) {
                    Spoilt other = ways.get(random.nextInt(ways.size())).of(line.split("\\|"), good.line(0));
                    spoilt.put(i + 2, saved.decimalComma() ? Saved.comma(other.reason()) : other.reason());
                    line = other.line();
                }
                lines.add(line);
            }
            String text = saved.text(header, lines);
            String label = "seed " + Suite.seed() + ", round " + round + " of " + count + ":\n" + text;
            JsonNode dry = read(command, text);
            same(dry, spoilt, days, saved, label);
            assertThat(entries()).as(label).isEqualTo(before);
            JsonNode done = read(command, text, "--yes");
            same(done, spoilt, days, saved, label);
            before += done.path("added").asInt();
            assertThat(entries()).as(label).isEqualTo(before);
            assertThat(read(command, text, "--yes").path("added").asInt())
                    .as(label)
                    .isZero();
        }
        assertThat(before).as(kept).isGreaterThan(19);
    }

    private static void same(JsonNode answer, Map<Integer, String> spoilt, int days, Saved saved, String label) {
        assertThat(answer.path("read").asInt()).as(label).isEqualTo(days - spoilt.size());
        List<Integer> refused = new ArrayList<>();
        for (JsonNode line : answer.path("notRead")) {
            refused.add(line.path("line").asInt());
            String why = line.path("why").asString();
            String said = saved.decimalComma() ? why.replaceAll("(?<=[0-9])[.](?=[0-9])", ",") : why;
            String reason = spoilt.getOrDefault(line.path("line").asInt(), "?");
            String expected = saved.decimalComma() ? reason.replaceAll("(?<=[0-9])[.](?=[0-9])", ",") : reason;
            assertThat(said).as(label).contains(expected);
            assertThat(line.path("tryThis").asString()).as(label).isNotBlank();
        }
        assertThat(refused).as(label).containsExactlyElementsOf(spoilt.keySet());
    }

    private static List<Spoiling> both(List<Spoiling> own) {
        List<Spoiling> all = new ArrayList<>(ANY);
        all.addAll(own);
        return all;
    }

    @Test
    void spoiltLinesOfWeatherAreRefusedAndTheRestOffered() throws IOException {
        spoil("weather", "date|tmax|tmin|rain", BadTablesIT::weather, both(WEATHER), "days of weather");
    }

    @Test
    void spoiltLinesOfANotebookAreRefusedAndTheRestOffered() throws IOException {
        spoil("history", "date|hole|on|side", BadTablesIT::notebook, both(NOTEBOOK), "holes");
    }

    @Test
    void halfAFileIsReadToItsLastWholeLineAndSaysSo() throws IOException {
        String text = "date,tmax,tmin,rain\n2026-01-01,14.5,8.5,0\n2026-01-02,15.5,8.5,12.5\n";
        int whole = text.indexOf("2026-01-02");
        for (int end = whole; end <= text.length(); end++) {
            JsonNode answer = read("weather", text.substring(0, end));
            boolean lineIsWhole = end == whole || end == text.length();
            boolean told =
                    !answer.path("unended").isNull() || answer.path("notRead").size() == 1;
            assertThat(told).as(text.substring(0, end)).isNotEqualTo(lineIsWhole);
            assertThat(answer.path("read").asInt()).isBetween(1, 2);
        }
        JsonNode cut = read("weather", text.substring(0, text.indexOf(",12.5")));
        assertThat(cut.path("notRead").path(0).path("why").asString()).isEqualTo("The file ends within this line.");
        JsonNode last = read("weather", text.substring(0, text.length() - 2));
        assertThat(last.path("unended").asString()).isEqualTo("2026-01-02,15.5,8.5,12.");
        JsonNode notebook = read("history", "date,hole,on,side\n2026-01-01,1,12,L9\n2026-01-02,1,1");
        assertThat(notebook.path("notRead").path(0).path("why").asString())
                .isEqualTo("The file ends within this line.");
        assertThat(read("history", "date,hole,on,side\n2026-01-01,1,12,L9")
                        .path("unended")
                        .asString())
                .isEqualTo("2026-01-01,1,12,L9");
    }

    @Test
    void decimalCommasBetweenCommasAreNotTakenForMoreColumns() throws IOException {
        JsonNode answer = read("weather", "date,tmax,tmin\n2026-01-01,14,5,8,5\n2026-01-02,\"15.5\",8\n");
        assertThat(answer.path("read").asInt()).isEqualTo(1);
        assertThat(answer.path("notRead").path(0).path("why").asString().toLowerCase(Locale.ROOT))
                .contains("5 fields")
                .contains("names 3");
        JsonNode blanks = read("weather", "date tmax tmin rain\n2026-01-01 14.5 8.5 0\n2026-01-02 14.5 8.5\n");
        assertThat(blanks.path("notRead").path(0).path("tryThis").asString()).contains("write -");
    }

    @Test
    void farDaysAreTakenWhenTheyAreMeant() throws IOException {
        String notebook = "date,hole,on,side\n1996-01-01,1,12,L9\n2026-01-01,1,12,L9\n2026-01-02,1,13,L9\n";
        assertThat(read("history", notebook).path("read").asInt()).isEqualTo(2);
        assertThat(read("history", notebook, "--accept", "days").path("read").asInt())
                .isEqualTo(3);
        assertThat(cupwright.run("history", "import", "x", "--accept", "holes").err())
                .contains("--accept takes: days");
    }
}
