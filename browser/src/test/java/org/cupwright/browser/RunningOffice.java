package org.cupwright.browser;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The real program with its pages open, on a port that was free. */
final class RunningOffice implements AutoCloseable {
    private static final int ENDS_WITHIN_SECONDS = 30;

    private final Process process;
    private final JsonNode opened;

    private RunningOffice(Process process, JsonNode opened) {
        this.process = process;
        this.opened = opened;
    }

    /** Opens the pages of a data folder. */
    static RunningOffice open(Path data, String... options) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-jar",
                System.getProperty("cupwright.jar"),
                "serve",
                "--json",
                "--port",
                "0",
                "--data",
                data.toString()));
        command.addAll(List.of(options));
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(
                            data.resolveSibling(data.getFileName() + ".err").toFile())
                    .start();
            return new RunningOffice(process, firstDocument(process));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
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
