package org.cupwright.app.field;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.storage.Sha256;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** What the changer's page is made of, and the worker that keeps it on the phone. */
final class PageFiles {
    static final String OWN = "/org/cupwright/app/field/files/";
    private static final String OFFICE = "/org/cupwright/app/office/assets/";
    private static final String PAGE = "/org/cupwright/app/office/pages/round.html";
    private static final String FONTS = "/org/cupwright/app/maps/fonts/";
    private static final String WORKER = "worker.js";
    private static final int NAMED_BY = 8;

    /** Everything that lies there, but for the worker, which is made below. */
    private static final List<String> OF_PAGE = ofPage();

    /** Of the office, whose look it has. */
    private static final List<String> OF_OFFICE = List.of("office.css", "mark.svg");

    private static final List<String> LETTERS =
            List.of("OpenSans-Regular.ttf", "OpenSans-Semibold.ttf", "OpenSans-Bold.ttf");

    private PageFiles() {}

    /** The worker, told which files to keep, under a name that is another one when any of them is. */
    static String worker() {
        String files = Stream.of(
                        List.of("/round"),
                        OF_PAGE.stream().map(name -> "/round/files/" + name).toList(),
                        OF_OFFICE.stream().map(name -> "/assets/" + name).toList(),
                        LETTERS.stream().map(name -> "/assets/" + name).toList())
                .flatMap(List::stream)
                .map(path -> "'" + path + "'")
                .collect(Collectors.joining(", ", "[", "]"));
        return "const KEPT = 'round-" + name() + "';\nconst FILES = " + files + ";\n" + text(OWN + WORKER);
    }

    private static List<String> ofPage() {
        try {
            return Arrays.stream(new PathMatchingResourcePatternResolver().getResources("classpath:" + OWN + "*.*"))
                    .map(Resource::getFilename)
                    .filter(name -> !name.equals(WORKER))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The drawing of our mark. */
    static byte[] mark() {
        return bytes(OFFICE + "mark.svg");
    }

    /** By content. */
    private static String name() {
        MessageDigest digest = Sha256.digest();
        digest.update(bytes(PAGE));
        digest.update(bytes(OWN + WORKER));
        OF_PAGE.forEach(file -> digest.update(bytes(OWN + file)));
        OF_OFFICE.forEach(file -> digest.update(bytes(OFFICE + file)));
        LETTERS.forEach(file -> digest.update(bytes(FONTS + file)));
        return HexFormat.of().formatHex(digest.digest(), 0, NAMED_BY);
    }

    private static String text(String path) {
        return new String(bytes(path), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String path) {
        try (InputStream in = PageFiles.class.getResourceAsStream(path)) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
