package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.cli.DemoFolder;
import org.cupwright.app.cli.InProcess;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a stranger gets under the link of the day's sheet, as the course gives it out and takes it back. */
class OpenSheetIT {
    private static final Pattern ROW =
            Pattern.compile("<th scope=\"row\">(\\d+)</th>\\s*<td>\\s*<b class=\"where\">([^<]*)</b>");
    private static final Pattern BECAME = Pattern.compile("<span class=\"became\">([^<]*)</span>");
    private static final Pattern LINK = Pattern.compile("href=\"(/sheet/[^\"]+)\"");
    private static final String PAGE = "/course/sheet";
    private static final String NAME = "Rowan Overhill"; // invented
    private static final String PASSWORD = "three plain oars";

    @TempDir
    Path folder;

    private InProcess commands;

    @BeforeEach
    void theInventedCourse() throws Exception {
        Path data = folder.resolve("data");
        DemoFolder.copyTo(data);
        commands = new InProcess(data);
    }

    private InProcess.Result done(Object... line) {
        InProcess.Result result = commands.run(line);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private OpenOffice office() throws InterruptedException {
        return new OpenOffice(folder.resolve("data"), InProcess.CLOCK, false);
    }

    private static Caller superintendent(OpenOffice office) {
        Caller caller = new Caller(office);
        caller.join(office.code(), NAME, PASSWORD);
        caller.signIn(NAME, PASSWORD);
        return caller;
    }

    private static void press(Caller caller, String button) {
        HttpResponse<String> answer = caller.post(PAGE, PAGE + "/" + button, Map.of());
        assertThat(Caller.leadsTo(answer)).startsWith(PAGE);
    }

    private static String link(Caller caller) {
        Matcher link = LINK.matcher(caller.get(PAGE).body());
        assertThat(link.find()).isTrue();
        return link.group(1);
    }

    private static List<String> rows(HttpResponse<String> page) {
        return ROW.matcher(page.body())
                .results()
                .map(row -> row.group(1) + " " + row.group(2))
                .toList();
    }

    private static List<String> became(HttpResponse<String> page) {
        return BECAME.matcher(page.body()).results().map(row -> row.group(1)).toList();
    }

    @Test
    void isClosedUntilGivenOutAndEndsWithItsLink() throws Exception {
        try (OpenOffice office = office()) {
            Caller stranger = new Caller(office);
            Caller superintendent = superintendent(office);
            String closed = refused(stranger, "/sheet/" + DemoCourse.ID);
            assertThat(closed).contains("There is no open sheet under this address");
            done("policy", "paper.publicSheet=yes");
            assertThat(refused(stranger, "/sheet/" + DemoCourse.ID)).isEqualTo(closed);
            assertThat(superintendent.get(PAGE).body()).doesNotContain("href=\"/sheet/");

            press(superintendent, "open");
            String first = link(superintendent);
            assertThat(first).matches("/sheet/[2-9a-hjkmnp-z]{20}");
            assertThat(stranger.get(first).statusCode()).isEqualTo(200);
            press(superintendent, "anew");
            String second = link(superintendent);
            assertThat(second).isNotEqualTo(first);
            assertThat(stranger.get(second).statusCode()).isEqualTo(200);
            assertThat(refused(stranger, first))
                    .as("nobody learns that it led somewhere")
                    .isEqualTo(closed);
            press(superintendent, "close");
            assertThat(refused(stranger, second)).isEqualTo(closed);
            press(superintendent, "open");
            assertThat(link(superintendent))
                    .as("paper that has it is right again")
                    .isEqualTo(second);
            assertThat(superintendent.get("/people").body())
                    .contains(NAME + ": set paper.publicSheet to no, before yes")
                    .contains(NAME + ": set paper.sheetLink to " + second.substring("/sheet/".length()));
        }
    }

    /** Who had set something for days to come is not to find the sheet open again on that day. */
    @Test
    void whatIsTakenBackStaysTakenBack() throws Exception {
        done("policy", "paper.publicSheet=yes", "paper.sheetLink=k7m2p9qrs4tuvwx3yz5a", "--date", "2026-06-25");
        try (OpenOffice office = office()) {
            Caller superintendent = superintendent(office);
            press(superintendent, "open");
            press(superintendent, "anew");
            press(superintendent, "close");
        }
        String later = done("policy", "paper.publicSheet", "paper.sheetLink", "--date", "2026-06-30", "--json")
                .out();
        assertThat(later).doesNotContain("k7m2p9qrs4tuvwx3yz5a").doesNotContain("\"yes\"");
    }

    @Test
    void showsWhatIsPublishedAndThenWhatIsCut() throws Exception {
        done("policy", "paper.publicSheet=yes", "paper.sheetLink=k7m2p9qrs4tuvwx3yz5a");
        try (OpenOffice office = office()) {
            Caller stranger = new Caller(office);
            String link = "/sheet/k7m2p9qrs4tuvwx3yz5a";
            JsonNode holes =
                    JsonMapper.shared().readTree(done("plan", "--json").out()).findValue("holes");
            HttpResponse<String> draft = stranger.get(link);
            assertThat(draft.body()).contains("not published yet").doesNotContain("scope=\"row\"");

            done("publish");
            HttpResponse<String> published = stranger.get(link);
            assertThat(published.headers().firstValue("Cache-Control").orElse(""))
                    .isEqualTo("no-store");
            assertThat(published.headers().firstValue("X-Robots-Tag")).contains("noindex");
            assertThat(published.body()).contains("Planned").doesNotContain("<script", "printed before");
            assertThat(became(published)).isEmpty();
            assertThat(rows(published)).hasSize(18);
            for (int i = 0; i < 18; i++) {
                assertThat(rows(published).get(i)).startsWith((i + 1) + " ");
                assertThat(rows(published).get(i))
                        .contains(holes.path(i).path("position").path("third").asString());
            }

            done(
                    "log",
                    "add",
                    "cup-changed",
                    "--hole",
                    "1",
                    "--as-planned",
                    "--when",
                    "06:10",
                    "--person",
                    NAME,
                    "--yes");
            done("log", "add", "cup-changed", "--hole", "7", "--on", "12", "--side", "L8", "--when", "06:40", "--yes");
            HttpResponse<String> cut = stranger.get(link);
            assertThat(cut.body())
                    .contains("2 of 18 cut, the last at 06:40")
                    .contains("printed before is no longer right: hole 7 is elsewhere than planned")
                    .doesNotContain(NAME);
            assertThat(became(cut)).hasSize(18).filteredOn("planned"::equals).hasSize(16);
            assertThat(became(cut).get(0)).isEqualTo("as cut at 06:10");
            assertThat(became(cut).get(6)).isEqualTo("elsewhere than planned, as cut at 06:40");
            assertThat(cut.body()).contains("12 on · 8 from left");
        }
    }

    private static String refused(Caller caller, String path) {
        HttpResponse<String> answer = caller.get(path);
        assertThat(answer.statusCode()).isEqualTo(404);
        return answer.body().replaceFirst("(?s).*<div class=\"problem\"(.*?)</div>.*", "$1");
    }
}
