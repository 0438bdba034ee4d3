package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.cli.DemoFolder;
import org.cupwright.app.cli.InProcess;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Where to lay the level, and what is doubtful about surveyed greens: asked for with nobody's patience, so that no page
 * waits for them.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SoughtIT {
    private static final String PATIENCE = "cupwright.patience";
    private static final Pattern ASKS = Pattern.compile("hx-get=\"([^\"]+again=true[^\"]*)\"");
    private static final Pattern STOP = Pattern.compile("action=\"(/work/[^\"]+/stop)\"");

    private OpenOffice office;
    private Caller caller;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        System.setProperty(PATIENCE, "0");
        DemoFolder.copyTo(folder.resolve("data"));
        office = new OpenOffice(folder.resolve("data"), InProcess.CLOCK, true);
        caller = new Caller(office);
    }

    @AfterAll
    void close() throws Exception {
        System.clearProperty(PATIENCE);
        office.close();
    }

    private HttpResponse<String> part(String path) {
        return caller.send(HttpRequest.newBuilder(URI.create(office.at(path)))
                .header("HX-Request", "true")
                .build());
    }

    private static String found(Pattern what, String body) {
        Matcher matcher = what.matcher(body);
        assertThat(matcher.find()).as(what + " in " + body).isTrue();
        return matcher.group(1).replace("&amp;", "&");
    }

    /** Asks again as the page does, until the part that was asked for comes instead. */
    private HttpResponse<String> instead(String body) throws InterruptedException {
        String asks = found(ASKS, body);
        HttpResponse<String> answer = part(asks);
        for (int look = 0; answer.headers().firstValue("HX-Retarget").isEmpty(); look++) {
            assertThat(look).as("it never comes").isLessThan(2000);
            assertThat(answer.body()).contains("<progress").doesNotContain("<html", "/stop");
            Thread.sleep(50);
            answer = part(asks);
        }
        return answer;
    }

    /** What the green's page says meanwhile of the spot stays there; with script the round comes into it. */
    @Test
    void aLevelRoundIsToldOfUntilItIsThere() throws Exception {
        HttpResponse<String> first = part("/green/7/spot?level=true");
        assertThat(first.body()).contains("Where to lay the level on green 7", "<progress", "Stop");
        HttpResponse<String> round = instead(first.body());
        assertThat(round.headers().firstValue("HX-Retarget")).contains("#spot");
        assertThat(round.body())
                .contains("<ol class=\"round\">", "class=\"reading\"")
                .doesNotContain("<progress");
    }

    /** Without script the page of the work leads back to it. */
    @Test
    void withoutScriptTheWorkLeadsToTheRoundAndToWhatIsDoubtful() throws Exception {
        for (String page : new String[] {"/green/4?level=true", "/course/findings?hole=4"}) {
            String work = Caller.leadsTo(caller.get(page));
            assertThat(work).startsWith("/work/");
            String next = caller.worked(work);
            assertThat(next).startsWith(page.substring(0, page.indexOf('?')));
            HttpResponse<String> back = caller.get(next);
            for (int look = 0; back.statusCode() != 200 && look < 3; look++) {
                back = caller.get(caller.worked(Caller.leadsTo(back)));
            }
            assertThat(back.body()).contains(page.startsWith("/green") ? "<ol class=\"round\">" : "id=\"hole-4\"");
        }
    }

    @Test
    void whatIsStoppedSaysSoAndIsNotBegunAnewByItself() throws Exception {
        assertThat(caller.get("/course").body()).contains("hx-get=\"/course/findings?date=2026-06-20\"");
        HttpResponse<String> first = part("/course/findings?date=2026-06-20");
        assertThat(first.body()).contains("<progress", "ground of every green").doesNotContain("<html");
        HttpResponse<String> stopped = caller.post("/password", found(STOP, first.body()), Map.of());
        String work = Caller.leadsTo(stopped);
        HttpResponse<String> page = caller.get(work);
        for (int look = 0; page.body().contains("hx-trigger=\"every"); look++) {
            assertThat(look).as("it never stops").isLessThan(2000);
            assertThat(page.body()).contains("It is being stopped");
            Thread.sleep(50);
            page = caller.get(work);
        }
        assertThat(page.body()).contains("Stopped before it was done");
        String back = found(Pattern.compile("class=\"button\" href=\"(/course[^\"]+)\""), page.body());
        assertThat(caller.get(back).body()).contains("Look at every green").doesNotContain("hx-get=\"/course/findings");
    }
}
