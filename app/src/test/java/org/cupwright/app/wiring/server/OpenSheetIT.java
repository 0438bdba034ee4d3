package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.cupwright.app.cli.DemoFolder;
import org.cupwright.app.cli.InProcess;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a stranger gets at the address of the day's sheet, step by step as the course opens it. */
class OpenSheetIT {
    private static final Pattern ROW = Pattern.compile("<th scope=\"row\">(\\d+)</th>\\s*<td>([^<]*)</td>");

    @TempDir
    Path folder;

    private InProcess commands;

    @BeforeEach
    void theInventedCourse() throws Exception {
        Path data = folder.resolve("data");
        DemoFolder.copyTo(data);
        commands = new InProcess(data);
    }

    private void done(Object... line) {
        InProcess.Result result = commands.run(line);
        assertThat(result.status()).as(result.err()).isZero();
    }

    @Test
    void isOpenWhereTheCourseSaysSoAndShowsWhatIsPublished() throws Exception {
        try (OpenOffice office = new OpenOffice(folder.resolve("data"), InProcess.CLOCK, false)) {
            Caller stranger = new Caller(office);
            String closed = refused(stranger, "/sheet/" + DemoCourse.ID);
            assertThat(closed).contains("There is no open sheet of " + DemoCourse.ID);
            assertThat(refused(stranger, "/sheet/nowhere").replace("nowhere", DemoCourse.ID))
                    .as("nobody learns which courses there are")
                    .isEqualTo(closed);

            done("policy", "paper.publicSheet=yes");
            InProcess.Result planned = commands.run("plan", "--json");
            assertThat(planned.status()).as(planned.err()).isZero();
            HttpResponse<String> draft = stranger.get("/sheet/" + DemoCourse.ID);
            assertThat(draft.statusCode()).isEqualTo(200);
            assertThat(draft.body()).contains("not published yet").doesNotContain("scope=\"row\"");

            done("publish");
            HttpResponse<String> published = stranger.get("/sheet/" + DemoCourse.ID);
            assertThat(published.headers().firstValue("Cache-Control").orElse(""))
                    .contains("max-age=60");
            List<String> rows = ROW.matcher(published.body())
                    .results()
                    .map(row -> row.group(1) + " " + row.group(2))
                    .toList();
            assertThat(rows).hasSize(18);
            JsonNode holes = JsonMapper.shared().readTree(planned.out()).findValue("holes");
            for (int i = 0; i < rows.size(); i++) {
                assertThat(rows.get(i)).startsWith((i + 1) + " ");
                assertThat(rows.get(i))
                        .contains(holes.path(i).path("position").path("third").asString());
            }
        }
    }

    private static String refused(Caller caller, String path) {
        HttpResponse<String> answer = caller.get(path);
        assertThat(answer.statusCode()).isEqualTo(404);
        return answer.body().replaceFirst("(?s).*<div class=\"problem\"(.*?)</div>.*", "$1");
    }
}
