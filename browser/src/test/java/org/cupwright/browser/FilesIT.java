package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Files handed in through a browser: good, bad, too large, and from nobody. */
@ExtendWith(AtWork.class)
class FilesIT {
    private static final long TOO_LARGE = 258L << 20;
    private static final int PATIENCE_MILLISECONDS = 60_000;

    private static void handIn(Workplace work, Page page, Path file) {
        page.navigate(work.at("/course/files"));
        page.locator("#weather").setInputFiles(file);
        page.locator("form:has(#weather) button.main").click();
    }

    @Test
    void aGoodFileIsLookedAtAndBroughtIn(Workplace work) {
        Path file = work.file("days.csv", "date,tmax,tmin,rain\n2025-03-01,12.5,4,0\n2025-03-02,13,5.5,0\n");
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            handIn(work, page, file);
            assertThat(page.locator("form.read")).containsText("2 days read");
            button(page, "Bring in").click();
            assertThat(page.locator(".said")).containsText("Brought in");
            page.reload();
            assertThat(page.locator("#weather")).isVisible();
            handIn(work, page, file); // what is there already is told
            assertThat(page.locator("form.read")).containsText("the same already: 2");
        }
    }

    @Test
    void aBadFileIsToldLineByLine(Workplace work) {
        Path file = work.file("bad.csv", "date,tmax,tmin,rain\n2026-06-18,warm,11,0\n");
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            handIn(work, page, file);
            assertThat(page.locator("main")).containsText("line 2: \"warm\" is not a number");
            assertThat(page.locator("main")).not().containsText("Exception");
            assertThat(button(page, "Bring in")).hasCount(0);
        }
    }

    private static void handInSurvey(Workplace work, Page page, Path file) {
        page.navigate(work.at("/course/files"));
        page.locator("#elevation").setInputFiles(file);
        page.locator("form:has(#elevation) button.main").click();
    }

    /** The work leads on by itself to what was found. */
    @Test
    void aSurveyIsLookedAtAsLongWork(Workplace work) {
        StringBuilder points = new StringBuilder("x,y,z\n");
        new DemoCourse(1)
                .survey("7")
                .forEach(point -> points.append(String.format(
                        Locale.ROOT, "%.3f,%.3f,%.3f%n", point.east(), point.north(), point.heightMetres() + 0.02)));
        Path file = work.file("points.csv", points.toString());
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            handInSurvey(work, page, file);
            assertThat(page.locator("form.read")).containsText("Nothing was stored");
            assertThat(page.locator("form.read")).containsText("points read");
            page.getByText("Leave it").click();
            assertThat(page.locator("#elevation")).isVisible();
        }
    }

    @Test
    void aSurveyThatCannotBeReadIsToldAndLeadsBack(Workplace work) {
        Path file = work.file("words.csv", "x,y,z\none,two,three\n");
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            handInSurvey(work, page, file);
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("words.csv");
            assertThat(page.locator("main")).not().containsText("Exception");
            page.getByText("Back").click();
            assertThat(page.locator("#elevation")).isVisible();
        }
    }

    @Test
    void whatIsTooLargeIsToldInWords(Workplace work, @TempDir Path folder) throws IOException {
        Path file = folder.resolve("large.csv");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(TOO_LARGE);
        }
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            handIn(work, page, file);
            assertThat(page.locator("h1")).containsText("larger than is taken here");
            assertThat(page.locator("main")).containsText("Send a smaller file");
        }
    }

    /** The answer comes while nearly all of what was announced has not been sent. */
    @Test
    void filesFromNobodyAreRefusedUnread(Workplace work) throws IOException {
        URI address = URI.create(work.at("/course/files/look"));
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(PATIENCE_MILLISECONDS);
            OutputStream out = socket.getOutputStream();
            out.write(String.join(
                            "\r\n",
                            "POST /course/files/look HTTP/1.1",
                            "Host: localhost",
                            "Content-Type: multipart/form-data; boundary=x",
                            "Content-Length: 200000000",
                            "",
                            "--x",
                            "Content-Disposition: form-data; name=\"file\"; filename=\"a.csv\"",
                            "",
                            "date")
                    .getBytes(StandardCharsets.US_ASCII));
            out.flush();
            String answer = start(socket.getInputStream());
            assertThat(answer).startsWith("HTTP/1.1 302").contains("/sign-in?ended");
        }
    }

    private static String start(InputStream in) throws IOException {
        StringBuilder answer = new StringBuilder();
        while (answer.indexOf("\r\n\r\n") < 0) {
            int read = in.read();
            if (read < 0) {
                break;
            }
            answer.append((char) read);
        }
        return answer.toString();
    }
}
