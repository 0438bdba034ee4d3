package org.cupwright.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the real program answers on the command line, beside the pages. */
final class Commands {
    private Commands() {}

    static JsonNode answer(Path data, String... command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("answer", ".json");
        List<String> whole = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar"));
        whole.add(RunningOffice.JAR.toString());
        whole.addAll(List.of(command));
        whole.addAll(List.of("--json", "--data", data.toString()));
        int code = new ProcessBuilder(whole)
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start()
                .waitFor();
        String text = Files.readString(out);
        if (code != 0) {
            throw new IOException(String.join(" ", command) + " failed: " + text);
        }
        return JsonMapper.shared().readTree(text);
    }
}
