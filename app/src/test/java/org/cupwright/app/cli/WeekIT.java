package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.sheets.PaperText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A week as a club without a survey would enter it, told in {@code week.txt}: who reads only the card or only the
 * screen knows each warning.
 */
class WeekIT {
    private static final Pattern WORD = Pattern.compile("([^\\s\"]*)\"([^\"]*)\"|(\\S+)");

    @TempDir
    private Path files;

    private InProcess cupwright;
    private Result last;

    @Test
    void theWeekRunsAndEveryWarningIsReadFirst() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        Result map = cupwright.run("import", "--course", "week", "--outlines", MadeCourse.outlines(files, 18));
        assertThat(map.status()).as(map.err()).isZero();
        int lines = 0;
        for (String line : script()) {
            if (!line.isBlank() && !line.startsWith("#")) {
                step(line.charAt(0) == 'c' || line.charAt(0) == 's' ? line : line.substring(0, 1), line);
                lines++;
            }
        }
        assertThat(lines).isGreaterThan(60);
    }

    private static List<String> script() throws IOException {
        try (InputStream in = WeekIT.class.getResourceAsStream("week.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    private void step(String sign, String line) throws IOException {
        String rest = line.substring(line.indexOf(' ') + 1);
        switch (sign.charAt(0)) {
            case '@' ->
                cupwright = new InProcess(files.resolve("data"), Clock.fixed(Instant.parse(rest), ZoneOffset.UTC));
            case '$' -> run(rest, 0);
            case '!' -> run(rest, 1);
            case '?' -> assertThat(plain(last.out())).as(line).contains(rest);
            case '-' -> assertThat(plain(last.out())).as(line).doesNotContain(rest);
            case 'c' -> assertThat(paper("changers-card.pdf")).as(line).contains(rest);
            case 's' -> assertThat(paper("hole-locations.pdf")).as(line).contains(rest);
            default -> throw new IllegalStateException("a line of the script nobody knows: " + line);
        }
    }

    private void run(String command, int status) {
        List<Object> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            words.add(word.group(3) != null ? word.group(3) : word.group(1) + word.group(2));
        }
        words.replaceAll(one -> one.equals("paper") ? files.resolve("paper") : one);
        last = cupwright.run(words.toArray());
        assertThat(last.status()).as(command + "\n" + last.err()).isEqualTo(status);
    }

    private String paper(String name) throws IOException {
        return plain(PaperText.words(Files.readAllBytes(files.resolve("paper").resolve(name))));
    }

    /** Where lines break does not matter. */
    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
