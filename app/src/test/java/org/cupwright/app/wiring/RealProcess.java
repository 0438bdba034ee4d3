package org.cupwright.app.wiring;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.cupwright.testing.Suite;

/** Runs the built program as a person does, and tells whether a folder is as it was. */
final class RealProcess {
    private static final long LONGEST_SECONDS = 300;

    private RealProcess() {}

    /** What a run came to. */
    record Result(int status, String out, String err) {}

    static Result cupwright(Object... arguments) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(program(List.of()));
        for (Object argument : arguments) {
            line.add(argument.toString());
        }
        return run(line);
    }

    /**
     * The same for suites of many short commands: by the real program in a full check, else within this process, where
     * most of a command's time, starting, falls away. Whatever is printed past the program's own outputs counts too.
     */
    static Result typed(Object... arguments) throws IOException, InterruptedException {
        if (Suite.full()) {
            return cupwright(arguments);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream before = System.err;
        PrintStream told = new PrintStream(err, true, StandardCharsets.UTF_8);
        System.setErr(told);
        try {
            String[] line = Stream.of(arguments).map(Object::toString).toArray(String[]::new);
            int status = Main.run(new PrintStream(out, true, StandardCharsets.UTF_8), told, line);
            return new Result(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        } finally {
            System.setErr(before);
        }
    }

    /**
     * How the program is started: by the quick compiler alone, as commands are over before the other one pays, and with
     * the launcher's collector and archive of classes.
     */
    static List<String> program(List<String> machine) {
        List<String> line = new ArrayList<>();
        line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        line.addAll(ClassesArchived.options());
        line.addAll(machine);
        line.addAll(List.of("-jar", System.getProperty("cupwright.jar")));
        return line;
    }

    static Result run(List<String> line) throws IOException, InterruptedException {
        Path out = Files.createTempFile("cupwright", ".out");
        Path err = Files.createTempFile("cupwright", ".err");
        try {
            Process process = new ProcessBuilder(line)
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IllegalStateException(line + " still ran after " + LONGEST_SECONDS + " s");
            }
            return new Result(process.exitValue(), text(out), text(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    /** The id of a process that has ended. */
    static long goneId() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        process.waitFor();
        return process.pid();
    }

    /** A hash over the names and contents of everything in a folder; "absent" where there is no folder. */
    static String hash(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return "absent";
        }
        try (Stream<Path> all = Files.walk(folder)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (Path path : all.sorted().toList()) {
                digest.update(folder.relativize(path).toString().getBytes(StandardCharsets.UTF_8));
                if (Files.isRegularFile(path)) {
                    digest.update(Files.readAllBytes(path));
                }
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
