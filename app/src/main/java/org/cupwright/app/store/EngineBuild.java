package org.cupwright.app.store;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.cupwright.app.storage.Sha256;
import org.cupwright.holelocation.judging.GreenJudge;

/**
 * Which build of the engine computes, on which Java: by the contents of its classes, as a version's name stays the same
 * while its developers change it.
 */
public final class EngineBuild {
    private static final int LETTERS = 16;
    private static final Optional<String> THIS = ofClass(GreenJudge.class);

    private EngineBuild() {}

    /** The build that is running; empty when its classes cannot be found. */
    public static Optional<String> current() {
        return THIS;
    }

    private static Optional<String> ofClass(Class<?> engine) {
        try {
            Path classes = Path.of(
                    engine.getProtectionDomain().getCodeSource().getLocation().toURI());
            return Optional.of(of(classes));
        } catch (URISyntaxException | IOException | RuntimeException elsewhere) {
            System.getLogger(EngineBuild.class.getName())
                    .log(
                            System.Logger.Level.DEBUG,
                            "results are not kept: the engine's classes are not files",
                            elsewhere);
            return Optional.empty();
        }
    }

    /** The build in a jar or a folder of classes. */
    static String of(Path classes) throws IOException {
        MessageDigest digest = Sha256.digest();
        digest.update(Runtime.version().toString().getBytes(StandardCharsets.UTF_8));
        if (Files.isRegularFile(classes)) {
            digest.update(libraries(classes).getBytes(StandardCharsets.UTF_8));
            digest.update(contents(classes).getBytes(StandardCharsets.UTF_8));
        } else {
            for (Path file : files(classes)) {
                digest.update(classes.relativize(file).toString().getBytes(StandardCharsets.UTF_8));
                digest.update(Files.readAllBytes(file));
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, LETTERS);
    }

    private static List<Path> files(Path classes) throws IOException {
        try (Stream<Path> all = Files.walk(classes)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /**
     * Names, sizes and check sums as the jar lists them: reading and digesting all that is in it would slow every
     * start.
     */
    private static String contents(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            return zip.stream()
                    .map(entry -> entry.getName() + " " + entry.getSize() + " " + entry.getCrc())
                    .sorted()
                    .toList()
                    .toString();
        }
    }

    /** The names of the jars beside the engine's own, which have their versions in them. */
    private static String libraries(Path jar) throws IOException {
        try (Stream<Path> all = Files.list(jar.getParent())) {
            return all.map(path -> path.getFileName().toString())
                    .sorted()
                    .toList()
                    .toString();
        }
    }
}
