package org.cupwright.app.cli.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** A file that is written whole, never over another. */
public record NewFile(Path file) {
    public void write(List<String> lines) {
        String end = System.lineSeparator();
        write(lines.isEmpty() ? "" : String.join(end, lines) + end);
    }

    public void write(String text) {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    public void write(byte[] bytes) {
        boolean made = false;
        try {
            Files.createFile(file);
            made = true;
            Files.write(file, bytes, StandardOpenOption.TRUNCATE_EXISTING);
        } catch (FileAlreadyExistsException there) {
            throw about("targetExists");
        } catch (IOException refused) {
            if (made) {
                file.toFile().delete(); // half a file is worse than none; where it cannot go, that is told
            }
            throw about("targetNotWritable");
        }
    }

    private Problem about(String kind) {
        return Problem.of(
                Message.of("problem.newFile." + kind),
                Message.of("where.place", new Name(file.toString())),
                "",
                Message.of("try.newFile." + kind));
    }
}
