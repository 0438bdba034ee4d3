package org.cupwright.app.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.cupwright.app.desk.Problem;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/** A text file that is written whole, never over another. */
final class NewFile {
    private final Path file;

    NewFile(Path file) {
        this.file = file;
    }

    void write(List<String> lines) {
        write(file -> Files.write(file, lines, StandardOpenOption.TRUNCATE_EXISTING));
    }

    void write(String text) {
        write(file -> Files.writeString(file, text, StandardOpenOption.TRUNCATE_EXISTING));
    }

    private interface Writing {
        void into(Path file) throws IOException;
    }

    private void write(Writing writing) {
        boolean made = false;
        try {
            Files.createFile(file);
            made = true;
            writing.into(file);
        } catch (FileAlreadyExistsException there) {
            throw about("targetExists", "");
        } catch (IOException refused) {
            throw notWritten(made, refused);
        }
    }

    private Problem notWritten(boolean made, IOException refused) {
        if (made) {
            file.toFile()
                    .delete(); // half a file is worse than none; where it cannot go, the problem says what happened
        }
        return about("targetNotWritable", String.valueOf(refused.getMessage()));
    }

    private Problem about(String kind, String value) {
        return Problem.of(
                Message.of("problem.newFile." + kind),
                Message.of("where.place", new Name(file.toString())),
                value,
                Message.of("try.newFile." + kind));
    }
}
