package org.cupwright.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program itself as the launcher starts it, with the pages of the invented course open. Linux tells its memory. */
final class StartedOffice implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("\"address\"\\s*:\\s*\"([^\"]+?)/?\"");

    private final Process process;
    private final String address;
    private final double startSeconds;

    private StartedOffice(Process process, String address, double startSeconds) {
        this.process = process;
        this.address = address;
        this.startSeconds = startSeconds;
    }

    /** The invented course, made in a first start that does not count. */
    static StartedOffice demo(Path data) throws IOException, InterruptedException {
        start(data).close();
        return start(data);
    }

    private static StartedOffice start(Path data) throws IOException {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(
                        List.of("./cupwright", "serve", "--demo", "--json", "--port", "0", "--data", data.toString()))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher address = ADDRESS.matcher(line);
            if (address.find()) {
                return new StartedOffice(process, address.group(1), (System.nanoTime() - start) / 1e9);
            }
        }
        throw new IOException("the pages were not opened");
    }

    /** Without a path. */
    String address() {
        return address;
    }

    /** From the command to open pages, s. */
    double startSeconds() {
        return startSeconds;
    }

    long residentMb() throws IOException {
        return memory("VmRSS");
    }

    long mostResidentMb() throws IOException {
        return memory("VmHWM");
    }

    private long memory(String name) throws IOException {
        return Files.readAllLines(Path.of("/proc", Long.toString(process.pid()), "status")).stream()
                .filter(line -> line.startsWith(name + ":"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
                .findFirst()
                .orElseThrow();
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        process.waitFor();
    }
}
