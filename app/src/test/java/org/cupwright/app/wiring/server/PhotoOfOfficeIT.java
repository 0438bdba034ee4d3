package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.desk.log.MadePhoto;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photo that tells where it was taken is handed in by the page, and looked for wherever it comes out again. */
class PhotoOfOfficeIT {
    private static final Pattern PHOTO = Pattern.compile("href=\"(/log/photo/([0-9a-f-]+))\"");

    @TempDir
    private Path folder;

    @Test
    void whereItWasTakenComesOutNowhere() throws Exception {
        Path data = folder.resolve("data");
        InProcess commands = new InProcess(data);
        done(commands, "import", "--course", "made", "--outlines", MadeCourse.outlines(folder, 2));
        String id;
        try (OpenOffice office = new OpenOffice(data, InProcess.CLOCK, false)) {
            Caller ida = new Caller(office);
            ida.join(office.code(), "Ida", "three plain oars");
            assertThat(ida.signIn("Ida", "three plain oars")).isEqualTo("/");
            handIn(ida, MadePhoto.png(), "11111111-1111-1111-1111-111111111111");
            Matcher first = photos(ida);
            nothingIsTold(given(ida, first.group(1), "image/png", "photo.png"));
            ida.post("/log", "/log/seen", Map.of("about", first.group(2), "form", first.group(2)));
            handIn(ida, MadePhoto.jpeg(), "22222222-2222-2222-2222-222222222222");
            Matcher second = photos(ida);
            nothingIsTold(given(ida, second.group(1), "image/jpeg", "photo.jpg"));
            id = second.group(2);
        }
        done(commands, "log", "photo", id, folder.resolve("given.jpg"));
        done(commands, "backup", folder.resolve("backup.db"));
        for (String file : new String[] {"given.jpg", "backup.db", "data/cupwright.db"}) {
            nothingIsTold(Files.readAllBytes(folder.resolve(file)));
        }
    }

    private static void done(InProcess commands, Object... line) {
        InProcess.Result result = commands.run(line);
        assertThat(result.status()).as(result.err()).isZero();
    }

    private static void handIn(Caller caller, byte[] photo, String form) {
        HttpResponse<String> kept = caller.sendFiles(
                "/log/add",
                Map.of(
                        "about",
                        "something-odd",
                        "form",
                        form,
                        "part.severity",
                        "soon",
                        "part.text",
                        "an invented ring",
                        "part.photo.file",
                        new String(photo, StandardCharsets.ISO_8859_1)));
        assertThat(Caller.leadsTo(kept)).as("%s", kept.statusCode()).startsWith("/log?");
    }

    private static Matcher photos(Caller caller) {
        Matcher photo = PHOTO.matcher(caller.get("/log").body());
        assertThat(photo.find()).as("a link to the photo").isTrue();
        return photo;
    }

    private static byte[] given(Caller caller, String path, String type, String name) {
        HttpResponse<byte[]> answer = caller.bytes(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains(type);
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(answer.headers().firstValue("Content-Disposition")).contains("inline; filename=" + name);
        assertThat(MadePhoto.holds(answer.body(), MadePhoto.LATITUDE)).isFalse();
        return answer.body();
    }

    private static void nothingIsTold(byte[] bytes) {
        assertThat(bytes).hasSizeGreaterThan(1000);
        for (String told : MadePhoto.TOLD) {
            if (!told.equals("xmp")) { // short enough to stand somewhere by chance
                assertThat(MadePhoto.holds(bytes, told.getBytes(StandardCharsets.US_ASCII)))
                        .as(told)
                        .isFalse();
            }
        }
    }
}
