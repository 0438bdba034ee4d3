package org.cupwright.app.wiring;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The real program with the pages of a data folder open, in a process that can be killed. */
final class ServedOffice implements AutoCloseable {
    private static final long ENDS_WITHIN_SECONDS = 60;

    private final Process process;
    private final JsonNode opened;

    private ServedOffice(Process process, JsonNode opened) {
        this.process = process;
        this.opened = opened;
    }

    static ServedOffice open(Path data) throws IOException {
        return open(data, data.resolveSibling(data.getFileName() + ".err"));
    }

    /** @param err what it has to say besides goes there */
    static ServedOffice open(Path data, Path err) throws IOException {
        List<String> line = RealProcess.program(List.of());
        line.addAll(List.of("serve", "--json", "--port", "0", "--data", data.toString()));
        Process process = new ProcessBuilder(line).redirectError(err.toFile()).start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        StringBuilder document = new StringBuilder();
        for (String part = said.readLine(); part != null; part = said.readLine()) {
            document.append(part).append('\n');
            if (part.startsWith("}")) {
                return new ServedOffice(process, JsonMapper.shared().readTree(document.toString()));
            }
        }
        throw new IOException("the pages were not opened: " + document);
    }

    /** An address of the pages. */
    String at(String path) {
        return opened.get("address").asString().replaceFirst("/$", "") + path;
    }

    /** The code of the first superintendent. */
    String code() {
        return opened.get("code").asString();
    }

    /** Without warning; answers when it is gone. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(ENDS_WITHIN_SECONDS, TimeUnit.SECONDS)) {
            kill();
            throw new IllegalStateException("the program did not end when it was told to");
        }
    }
}
