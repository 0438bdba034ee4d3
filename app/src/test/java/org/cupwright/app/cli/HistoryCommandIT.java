package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An invented notebook is taken into the logbook. */
class HistoryCommandIT {
    @TempDir
    Path files;

    private TableDesk desk;
    private InProcess cupwright;

    @BeforeEach
    void aCourse() throws IOException {
        desk = new TableDesk(files, 3);
        cupwright = desk.cupwright();
    }

    private Result read(String text, Object... more) throws IOException {
        return desk.read("history", text, more);
    }

    private String list() {
        return desk.list();
    }

    @Test
    void nothingIsKeptUntilThatIsWanted() throws IOException {
        String notebook = "date,hole,on,side\n2026-05-01,1,12,L11\n2026-05-02,2,10,R9\n";
        Result dry = read(notebook);
        assertThat(dry.out())
                .contains("2 lines read, Fri 1 May 2026 to Sat 2 May 2026")
                .contains("dry run");
        assertThat(list()).contains("No entries");
        assertThat(read(notebook, "--yes").out()).contains("2 entries kept");
        assertThat(list())
                .contains("2026-05-01 05:00  1 ")
                .contains("12 on · 11 from left")
                .contains("(notebook)");
        assertThat(read(notebook, "--yes").out()).contains("No entries kept; 2 were there already");
        assertThat(read(notebook, "--yes", "--person", "other").out()).contains("No entries kept; 2 were");
    }

    @Test
    void whetherDayOrMonthStandsFirstIsSeenFromTheFileOrAskedOnce() throws IOException {
        String head = "date,hole,on,side\n";
        assertThat(read(head + "31/5/2026,1,12,L11\n10/6/2026,2,10,R9\n").out())
                .contains("Sun 31 May 2026 to Wed 10 Jun 2026")
                .contains("the day first");
        assertThat(read(head + "5/31/26,1,12,L11\n6/10/26,2,10,R9\n").out())
                .contains("Sun 31 May 2026 to Wed 10 Jun 2026")
                .contains("the month first");
        assertThat(read(head + "6/6/2026,1,12,L11\n").out()).contains("Sat 6 Jun 2026");

        String unclear = head + "2026-05-01,1,12,L11\n10/6/2026,2,10,R9\n";
        Result asked = read(unclear, "--yes");
        assertThat(asked.status()).isEqualTo(1);
        assertThat(asked.err()).contains("line 3, \"10/6/2026\",", "both ways", "--dates day-first");
        assertThat(read(unclear, "--dates", "day-first").out()).contains("Wed 10 Jun 2026");
        assertThat(read(unclear, "--dates", "Month-First").err() + list())
                .as("not come yet")
                .doesNotContain("2026-10-06");
        assertThat(read(head + "1/2/2026,1,12,L11\n", "--dates", "month-first").out())
                .contains("Fri 2 Jan 2026");
        cupwright.answering(false);
        assertThat(read(head + "1/2/2026,1,12,L11\n2/3/2026,2,10,R9\n").out())
                .contains("Fri 2 Jan 2026 to Tue 3 Feb 2026");
        cupwright.answering(true);
        assertThat(read(head + "1/2/2026,1,12,L11\n").out()).contains("Sun 1 Feb 2026");

        Result both = read(head + "31/5/2026,1,12,L11\n6/10/2026,2,10,R9\n5/30/2026,3,10,R9\n");
        assertThat(both.status()).isEqualTo(1);
        assertThat(both.err()).contains("line 2, \"31/5/2026\"", "line 4, \"5/30/2026\"", "two orders");
        Result against = read(head + "31/5/2026,1,12,L11\n", "--dates", "month-first");
        assertThat(against.status()).isEqualTo(1);
        assertThat(against.err()).contains("31/5/2026").contains("--dates");
        assertThat(read(head + "31/4/2026,1,12,L11\n").out()).contains("31/4/2026");
        assertThat(read(head + "1/2/2026,1,12,L11\n", "--dates", "sideways").status())
                .isEqualTo(2);
    }

    @Test
    void placesAreReadAsCrewsWriteThem() throws IOException {
        String words = "date,hole,words\n2026-05-01,1,\"14 on, 5 from right edge.\"\n2026-05-01,2,14F 5R\n"
                + "2026-05-01,3,BL\n2026-05-02,3,B/L\n";
        assertThat(read(words, "--yes").out()).contains("4 lines read", "4 entries kept");
        assertThat(list().split("14 on · 5 from right", -1)).hasSize(3);
        assertThat(list().split("back · left", -1)).hasSize(3);
    }

    @Test
    void pacesAreNoPowersOfTen() throws IOException {
        assertThat(read("date,hole,on,side\n2026-05-01,1,1e1,L11\n2026-05-02,2,10,R9\n")
                        .out())
                .contains("one line reads")
                .contains("line 2", "1e1");
    }

    @Test
    void tablesAsOfficeProgramsWriteThemAreRead() throws IOException {
        String notebook = "\uFEFFSide;Date;\"HOLE\";On;Weather\r\nR 9;1.5.2026;2;\"10½\";fine\r\n"
                + "8,5l;2026-05-02;\"3\";10,5;\r\n\r\n# a word\r\n";
        Result result = read(notebook, "--yes");
        assertThat(result.out()).as(result.err()).contains("2 lines read").contains("2 entries kept");
        assertThat(list()).contains("10½ on · 9 from right").contains("10½ on · 8½ from left");
    }

    @Test
    void linesThatDoNotReadAreNamedWithTheReason() throws IOException {
        Result result = read("date,hole,on,side\n"
                + "2026-05-01,1,12,L11\n"
                + "31-05-2026,1,12,L11\n"
                + "2026-05-03,77,12,L11\n"
                + "2026-05-04,1,99,L11\n"
                + "2026-05-05,1,far,L11\n"
                + "2026-05-06,1,12,left\n"
                + "2026-05-07,1,,L11\n"
                + "2036-05-08,1,12,L11\n"
                + "2026-05-01,1,9,L11\n"
                + "2026-02-30,1,9,L11\n");
        assertThat(result.status()).isZero();
        assertThat(result.out())
                .contains("one line reads")
                .contains("9 lines do not read")
                .contains("line 3: \"31-05-2026\" is not a day")
                .contains("line 4: There is no hole called \"77\"")
                .contains("line 5: No place on the green")
                .contains("line 6: \"far\"")
                .contains("line 7: \"left\"")
                .contains("line 8: Nothing stands under \"on\"")
                .contains("line 9: 2036-05-08 has not come yet")
                .contains("line 10: Hole 1 stands in the file for this day already")
                .contains("line 11: There is no day 2026-02-30: that month has 28 days.");
    }

    @Test
    void whatIsNoTableIsRefused() throws IOException {
        assertThat(read("").err()).contains("empty");
        assertThat(read("day,hole\n").err()).contains("date, on, side");
        assertThat(read("\u0000\u0001").err()).contains("not text");
        assertThat(read("date,hole,on,side\n" + "x".repeat(70_000)).err()).contains("not text");
        assertThat(cupwright.run("history", "import", files.resolve("none")).err())
                .contains("no such file");
        assertThat(cupwright.run("history", "import", files).status()).isEqualTo(1);
        assertThat(cupwright.run("history").status()).isEqualTo(2);
    }

    @Test
    void wordsInQuotationMarksMayRunOverLines() throws IOException {
        Result dry = read("date,hole,words\n2026-05-01,1,\"12 on,\n5 left\"\n2026-05-02,2,\"12 on\n");
        assertThat(dry.out().replaceAll("\\s+", " ")).contains("one line reads").contains("line 4:");
    }

    @Test
    void aNotebookInWordsSaysNoMoreThanItKnows() throws IOException {
        String notebook = "date,hole,words\n2026-05-01,1,"
                + "\"12 on, 5 left\"\n2026-05-02,1,back left\n2026-05-03,1,left in yesterday's hole\n"
                + "2026-05-04,1,5 L 12\n"
                + "2026-05-05,1,by the oak\n2026-05-06,1,\n";
        Result dry = read(notebook);
        assertThat(dry.out().replaceAll("\\s+", " "))
                .contains("3 lines read")
                .contains("One line knows no more than the part of the green")
                .contains("line 5: \"5 L 12\" can be read two ways. Write 12 on, L5 or 5 on, L12.")
                .contains("line 6: \"by the oak\" does not say where")
                .contains("line 7: Nothing stands under \"words\"");
        assertThat(list()).contains("No entries");
        assertThat(read(notebook, "--yes").out()).contains("3 entries kept");
        assertThat(list())
                .contains("12 on · 5 from left")
                .contains("the place known roughly · back · left")
                .contains("left in yesterday's hole");
        assertThat(read(notebook, "--yes").out()).contains("No entries kept; 3 were");
    }
}
