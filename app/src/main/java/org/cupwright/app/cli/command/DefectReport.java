package org.cupwright.app.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

/** Details of a defect of ours, written to a file for whoever will mend it. */
record DefectReport(Surroundings surroundings) {
    /**
     * Writes the details into the data folder, or the folder for temporary files where that cannot be; answers the
     * path.
     */
    String write(Path data, Throwable defect) {
        Instant now = surroundings.clock().instant();
        String name = "cupwright-defect-" + now.toString().replace(":", "") + ".txt";
        String details = details(now, defect);
        Path folder = Files.isDirectory(data) && Files.isWritable(data)
                ? data
                : Path.of(System.getProperty("java.io.tmpdir"));
        try {
            return Files.writeString(folder.resolve(name), details).toString();
        } catch (IOException alsoRefused) {
            defect.addSuppressed(new UncheckedIOException(alsoRefused));
            surroundings.err().println(details(now, defect));
            return "standard error";
        }
    }

    private static String details(Instant now, Throwable defect) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        out.println("cupwright " + Version.text() + ", " + now);
        out.println("Java " + Runtime.version() + ", " + System.getProperty("os.name") + " "
                + System.getProperty("os.arch"));
        defect.printStackTrace(out);
        out.flush();
        return text.toString();
    }
}
