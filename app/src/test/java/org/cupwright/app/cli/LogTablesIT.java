package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Invented entries go out as tables and come back, and tables made by hand are taken in (the course's today is
 * 2026-06-20).
 */
class LogTablesIT {
    @TempDir
    Path files;

    private TableDesk desk;

    @BeforeEach
    void aCourse() throws IOException {
        desk = new TableDesk(files, 3);
    }

    private Result read(String kind, String text, Object... more) throws IOException {
        Object[] line = new Object[3 + more.length];
        line[0] = "--csv";
        line[1] = "--kind";
        line[2] = kind;
        System.arraycopy(more, 0, line, 3, more.length);
        Result result = desk.read("log", text, line);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private static String said(Result result) {
        return result.out().replaceAll("\\s+", " ");
    }

    private Result run(Object... arguments) {
        Result result = desk.cupwright().run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private String export(String kind, Object... more) throws IOException {
        Path file = files.resolve(kind + System.nanoTime() + ".csv");
        Object[] line = {"log", "export", file, "--csv", "--kind", kind};
        Object[] all = java.util.Arrays.copyOf(line, line.length + more.length);
        System.arraycopy(more, 0, all, line.length, more.length);
        run(all);
        return Files.readString(file);
    }

    @Test
    void whatGoesOutComesBackAndTwiceAddsNothing() throws IOException {
        run("log", "add", "cup", "--hole", "1", "--on", "12", "--side", "L11", "--set", "flag==1+2, \"red\"");
        run("log", "add", "cup", "--hole", "2", "--at", "500111.25,4400011");
        String table = export("cup-changed", "--words");
        assertThat(table)
                .startsWith("id,time,hole,person,plannedEastMetres,plannedNorthMetres,cutAtEastMetres,cutAtNorthMetres,"
                        + "foundBy,cutter,way,soil,rimWhited,edgeRagged,flag,recorded,words\r\n")
                .contains("\"'=1+2, \"\"red\"\"\"")
                .contains(",500111.25,4400011,phone,,one-piece,none,no,no,")
                .contains("12 on · 11 from left");
        assertThat(said(read("cup", table)))
                .contains("2 lines of 2 read; 0 new, 2 there already")
                .contains("dry run");
        String before = desk.list();
        TableDesk other = new TableDesk(Files.createDirectory(files.resolve("other")), 3);
        assertThat(other.read("log", table, "--csv", "--kind", "cup", "--yes").out())
                .contains("2 entries kept; none was");
        assertThat(other.list()).isEqualTo(before);
        assertThat(other.read("log", table, "--csv", "--kind", "cup", "--yes").out())
                .contains("No entries kept; 2 were");
    }

    @Test
    void aCorrectedEntryGoesOutAsItCountsAndIsKnownEitherWay() throws IOException {
        run("log", "add", "speed-read", "--set", "feet=10", "--when", "04:30");
        String first = export("speed-read");
        String id = first.lines().skip(1).findFirst().orElseThrow().substring(0, 8);
        run("log", "correct", id, "--set", "feet=11.5");
        String corrected = export("speed-read");
        assertThat(corrected).contains(",11.5,");
        assertThat(read("speed-read", first, "--yes").out()).contains("No entries kept; one was");
        assertThat(read("speed-read", corrected, "--yes").out()).contains("No entries kept; one was");
        assertThat(said(read("speed-read", first.replace(",10,", ",12,"))))
                .contains("is on record with other contents")
                .contains("cupwright log correct " + id);
        run("log", "withdraw", id);
        assertThat(export("speed-read").lines()).hasSize(1);
    }

    @Test
    void tablesMadeByHandAreReadOnce() throws IOException {
        String marks = "Date;Hole;On;Side;Look\n19.6.2026;1;12;L5;high\n2026-06-19;2;10½;R 4;dam\n";
        assertThat(said(read("plug-seen", marks)))
                .contains("2 lines of 2 read; 2 new, 0 there already")
                .contains("12 on · 5 from left");
        assertThat(desk.list()).contains("No entries");
        assertThat(read("plug-seen", marks, "--yes").out()).contains("2 entries kept");
        assertThat(read("plug-seen", marks, "--yes", "--person", "other").out()).contains("No entries kept; 2 were");
        String closed =
                "date,hole,east,north,radius,use,reason,weather\n2026-06-18,1,500011,4400011,2,closed,wear,dull\n";
        assertThat(said(read("ground-marked", closed, "--yes")))
                .contains("2 paces about")
                .contains("Columns not used: weather.")
                .contains("One entry kept");
        String rounds = "day,rounds\n2026-06-17,112\n2026-06-18,98\n";
        assertThat(read("rounds-played", rounds, "--yes").out()).contains("2 entries kept");
        String tools = "date,time,missing\n2026-06-18,05:10,\"tee, long\"\n2026-06-19,05:10,\n";
        assertThat(said(read("tools-checked", tools, "--yes"))).contains("2 entries kept");
    }

    @Test
    void whetherDayOrMonthStandsFirstIsSeenFromTheTableOrAskedOnce() throws IOException {
        String head = "date,hole,on,side\n";
        assertThat(said(read("cup-changed", head + "5/6/2026,1,12,L9\n13/6/2026,2,12,L9\n")))
                .contains("2 lines of 2 read", "the day first", "2026-06-05 05:00", "2026-06-13 05:00");
        assertThat(said(read("cup-changed", head + "5/6/2026,1,12,L9\n5/13/26,2,12,L9\n")))
                .contains("2 lines of 2 read", "the month first", "2026-05-06 05:00", "2026-05-13 05:00");
        String unclear = head + "2026-05-01,1,12,L9\n5/6/2026,2,12,L9\n";
        assertThat(said(read("cup-changed", unclear, "--dates", "month-first"))).contains("2026-05-06 05:00");
        List<String> asked = new ArrayList<>();
        for (boolean dayFirst : List.of(true, false)) {
            desk.cupwright().answering(question -> {
                asked.add(question);
                return Optional.of(dayFirst);
            });
            assertThat(said(read("cup-changed", unclear + "6/5/2026,3,12,L9\n")))
                    .contains(dayFirst ? "2026-06-05" : "2026-05-06");
        }
        assertThat(asked).hasSize(2).allMatch(question -> question.contains("5/6/2026"));
    }

    @Test
    void daysThatNobodySaysHowToReadKeepNothing() throws IOException {
        String head = "date,hole,on,side\n";
        Result unclear = refused(head + "2026-05-01,1,12,L9\n5/6/2026,2,12,L9\n");
        assertThat(unclear.err()).contains("line 3, \"5/6/2026\",", "both ways", "--dates day-first");
        Result both = refused(head + "13/6/2026,1,12,L9\n5/6/2026,3,12,L9\n5/14/2026,2,12,L9\n");
        assertThat(both.err()).contains("line 2, \"13/6/2026\"", "line 4, \"5/14/2026\"", "two orders");
        Result against = refused(head + "13/6/2026,1,12,L9\n", "--dates", "month-first");
        assertThat(against.err()).contains("13/6/2026", "--dates");
        assertThat(desk.list()).contains("No entries");
        assertThat(said(read("cup-changed", head + "31/4/2026,1,12,L9\n"))).contains("\"31/4/2026\" is not a day");
    }

    private Result refused(String table, Object... more) throws IOException {
        List<Object> line = new ArrayList<>(List.of("--csv", "--kind", "cup-changed", "--yes"));
        line.addAll(List.of(more));
        Result result = desk.read("log", table, line.toArray());
        assertThat(result.status()).isEqualTo(1);
        return result;
    }

    @Test
    void timesAndDaysThatAreSpokenOfTakeStrokesToo() throws IOException {
        assertThat(said(read("speed-read", "time,feet\n13/6/2026 5:40,10\n"))).contains("2026-06-13 05:40");
        assertThat(said(read("rounds-played", "day,rounds\n13/6/2026,112\n"))).contains("2026-06-13");
    }

    @Test
    void whatIsAskedWhenItIsTypedIsAskedOfALine() throws IOException {
        String depths = "date,hole,holeDepthMillimetres,cupDepthMillimetres\n2026-06-18,1,4,1\n2026-06-18,2,104,26\n";
        assertThat(said(read("spot-check", depths, "--yes")))
                .contains("line 2:")
                .contains("4 mm? Did you mean 4 in?")
                .contains("--accept questions")
                .contains("One entry kept");
        assertThat(read("spot-check", depths, "--yes", "--accept", "questions").out())
                .contains("One entry kept; one was");
        assertThat(said(read("ball-mark", "date,hole,east,north\n2026-06-18,1,500050,4400011\n")))
                .contains("off the green of hole 1");
        assertThat(said(read("speed-read", "time,feet\n2026-06-20T06:00,10\n"))).contains("has not come yet");
        assertThat(said(read("weather-entered", "day,highestCelsius,lowestCelsius\n2026-06-18,8,18\n")))
                .contains("the lowest temperature, 18 °C, is above the highest, 8 °C");
        String twice = "date,hole,on,side\n2026-06-18,1,12,L9\n2026-06-18,1,13,L9\n";
        assertThat(said(read("cup-changed", twice)))
                .contains("one line of 2 read")
                .contains("has a change on record");
    }

    /** A bad table, and what is said of it. */
    @Test
    void badTablesAreNamedWithTheReason() throws IOException {
        for (List<String> bad : List.of(
                List.of("plug-seen", "date,hole,on,side,look\n2026-06-18,1,12,,high\n", "A place without side."),
                List.of("plug-seen", "date,hole,look\n2026-06-18,1,high\n", "must also say: at", "on and side"),
                List.of("plug-seen", "date,hole,on,side,look\n2026-06-18,9,12,L5,high\n", "no hole called \"9\""),
                List.of("plug-seen", "date,on,side,look\n2026-06-18,12,L5,high\n", "about one hole"),
                List.of("ball-mark", "date,hole,on,side,east,north\n2026-06-18,1,1,L5,2,2\n", "given twice"),
                List.of("note-to-next", "text\nhello\n", "does not say when"),
                List.of("note-to-next", "time,text\n05:10,hello\n", "of no day", "column date"),
                List.of("note-to-next", "id,date,text\n7,2026-06-18,hello\n", "is not an entry's id"),
                List.of("note-to-next", "date,text\n2026-06-18,a\n2026-06-18,a\n", "same as line 2"),
                List.of("note-to-next", "date,text\n2026-06-18,\"a\n2026-06-19,b\n", "not closed"),
                List.of("note-to-next", "date,text\n2026-06-18,a,b\n", "3 fields"),
                List.of("ground", "date,hole,on,side,use,reason\n2026-06-18,1,9,L9,closed,wear\n", "column radius"),
                List.of("sprayed", "date,product,reentryFrom\n2026-06-18,made,noon\n", "\"noon\" is not a time"))) {
            String said = said(read(bad.get(0), bad.get(1), "--yes"));
            assertThat(said).contains("not read:").contains(bad.subList(2, bad.size()));
        }
        Result none = desk.read("log", "a,b\n1,2\n", "--csv", "--kind", "plug-seen");
        assertThat(none.status()).isEqualTo(1);
        assertThat(none.err()).contains("atEastMetres");
        assertThat(desk.read("log", "", "--csv", "--kind", "plug-seen").err()).contains("empty");
        assertThat(desk.read("log", "date,text\n", "--csv").err()).contains("--kind K");
        assertThat(desk.read("log", "date,text\n", "--kind", "frost").err()).contains("--csv");
        assertThat(desk.read("log", "date,text\n", "--csv", "--kind", "frst").err())
                .contains("no kind of entry");
        assertThat(desk.list()).doesNotContain("hello").doesNotContain("plug");
    }
}
