package org.cupwright.browser;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The real program with its pages open, on a port that was free. */
final class RunningOffice implements AutoCloseable {
    /** The program. */
    static final Path JAR =
            Path.of(System.getProperty("cupwright.jar")).toAbsolutePath().normalize();

    /** What the launcher tells Java of compiling and of room for what is young. */
    private static final List<String> AS_THE_LAUNCHER = List.of(
            "-XX:+UseSerialGC",
            "-XX:NewSize=128m",
            "-XX:Tier4InvocationThreshold=15000",
            "-XX:Tier4MinInvocationThreshold=2000",
            "-XX:Tier4CompileThreshold=45000");

    private static final int ENDS_WITHIN_SECONDS = 30;

    private final Process process;
    private final JsonNode opened;

    private RunningOffice(Process process, JsonNode opened) {
        this.process = process;
        this.opened = opened;
    }

    /** Opens the pages of a data folder, on a port that is free. */
    static RunningOffice open(Path data, String... options) {
        return open(data, 0, options);
    }

    /** The same on a port that is known, as after it was closed. */
    static RunningOffice open(Path data, int port, String... options) {
        try {
            List<String> command = new ArrayList<>();
            command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            command.addAll(AS_THE_LAUNCHER);
            command.addAll(archived());
            command.addAll(List.of(
                    "-jar",
                    JAR.toString(),
                    "serve",
                    "--json",
                    "--port",
                    Integer.toString(port),
                    "--data",
                    data.toString()));
            command.addAll(List.of(options));
            Process process = new ProcessBuilder(command)
                    .redirectError(
                            data.resolveSibling(data.getFileName() + ".err").toFile())
                    .start();
            return new RunningOffice(process, firstDocument(process));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** With the archive of classes that the program's own tests made as the launcher does, where they ran before. */
    private static List<String> archived() throws IOException {
        Path archive = JAR.resolveSibling("rehearsed")
                .resolve(Files.getLastModifiedTime(JAR).toMillis() + ".jsa");
        return Files.exists(archive)
                ? List.of("-Xshare:auto", "-XX:SharedArchiveFile=" + archive, "-Xlog:cds*=off")
                : List.of();
    }

    private static JsonNode firstDocument(Process process) throws IOException {
        BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        StringBuilder document = new StringBuilder();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            document.append(line).append('\n');
            if (line.startsWith("}")) {
                return JsonMapper.shared().readTree(document.toString());
            }
        }
        throw new IOException("the pages were not opened: " + document);
    }

    /** An address of the pages. */
    String at(String path) {
        return opened.get("address").asString().replaceFirst("/$", "") + path;
    }

    int port() {
        return URI.create(at("/")).getPort();
    }

    /** The code of the first superintendent. */
    Optional<String> code() {
        return Optional.ofNullable(opened.get("code")).map(JsonNode::asString);
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(ENDS_WITHIN_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IllegalStateException("the program did not end when it was told to");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
