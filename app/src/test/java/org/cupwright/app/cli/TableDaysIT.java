package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Days that cannot be meant in tables, notebooks and entries: each line is refused before anything is kept and when it
 * is to be kept, and the others are not held up by it (the course's today is 2026-06-20).
 */
class TableDaysIT {
    private static final String OUTSIDE = "not among the days that can be spoken of";

    @TempDir
    Path files;

    private TableDesk desk;

    @BeforeEach
    void aCourse() throws IOException {
        desk = new TableDesk(files, 2);
    }

    private static String plain(Result result) {
        assertThat(result.status()).as(result.out() + result.err()).isZero();
        return result.out().replaceAll("\\s+", " ");
    }

    private void refusedAlways(String group, String text, String reason, Object... more) throws IOException {
        Object[] keeping = new Object[more.length + 1];
        System.arraycopy(more, 0, keeping, 0, more.length);
        keeping[more.length] = "--yes";
        assertThat(plain(desk.read(group, text, more))).contains(reason);
        assertThat(plain(desk.read(group, text, keeping))).contains(reason);
    }

    private void notes(String line, String reason, Object... accepting) throws IOException {
        Object[] more = new Object[accepting.length + 3];
        System.arraycopy(new Object[] {"--csv", "--kind", "note-to-next"}, 0, more, 0, 3);
        System.arraycopy(accepting, 0, more, 3, accepting.length);
        refusedAlways("log", "date,text,recorded\n2026-06-19,sound,\n" + line + "\n", reason, more);
        assertThat(desk.list()).contains("sound");
        assertThat(desk.cupwright().run("log", "list", "--from", "2026-06-21").out())
                .doesNotContain("odd");
    }

    @Test
    void entriesOfDaysThatCannotBeMeantAreRefusedThoughQuestionsAreAccepted() throws IOException {
        for (String day : new String[] {"2028-06-22", "2206-06-20", "9999-12-31", "1989-12-31", "0206-06-20"}) {
            notes(day + ",odd,", OUTSIDE, "--accept", "questions");
        }
    }

    @Test
    void entriesOfDaysToComeAreAskedAbout() throws IOException {
        notes("2026-06-23,odd,", "has not come yet");
        notes("2206-06-20,odd,2206-06-20T05:40", "Is the clock right?");
    }

    @Test
    void daysThatEntriesNameAreRefusedInTablesAndWhenTyped() throws IOException {
        for (String day : new String[] {"2206-06-20", "0206-06-20"}) {
            Result typed = desk.cupwright()
                    .run("log", "add", "rounds-played", "--set", "day=" + day, "--set", "rounds=80", "--yes");
            assertThat(typed.status()).as(typed.out()).isEqualTo(1);
            assertThat(typed.err().replaceAll("\\s+", " ")).contains(OUTSIDE, "day", "try:");
            refusedAlways(
                    "log",
                    "date,day,rounds\n2026-06-19,2026-06-19,80\n2026-06-18," + day + ",70\n",
                    OUTSIDE,
                    "--csv",
                    "--kind",
                    "rounds-played",
                    "--accept",
                    "questions");
        }
    }

    @Test
    void notebooksOfDaysThatCannotBeMeantAreRefused() throws IOException {
        refusedAlways("history", "date,hole,on,side\n1889-06-10,1,9,L9\n1889-06-11,1,9,R9\n", OUTSIDE);
        refusedAlways("history", "date,hole,on,side\n2206-06-10,1,9,L9\n", "2206");
    }

    @Test
    void weatherOfDaysThatCannotBeMeantIsRefused() throws IOException {
        refusedAlways("weather", "date,tmax,tmin,rain\n1889-06-10,20,9,0\n1889-06-11,20,9,0\n", OUTSIDE);
        refusedAlways("weather", "date,tmax,tmin,rain\n2206-06-10,20,9,0\n", "2206");
    }
}
