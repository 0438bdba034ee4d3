package org.cupwright.app.desk.files;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import org.cupwright.finding.Finding;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Reads files that a person hands in, and says what is wrong with those that cannot be read. */
public final class FileReading {
    private FileReading() {}

    /** Reads something from a stream. */
    public interface Reader<T> {
        T read(InputStream in) throws IOException;
    }

    public static <T> T read(SourceFile file, Reader<T> reader) {
        try (InputStream in = new BufferedInputStream(file.open())) {
            return reader.read(in);
        } catch (UnreadableFile unreadable) {
            throw problem(unreadable.finding(), file.name());
        } catch (NoSuchFileException missing) {
            throw about("missing", file, file.name());
        } catch (AccessDeniedException refused) {
            throw about("refused", file, file.name());
        } catch (SourceFile.NotAFile other) {
            throw about("notAFile", file, file.name());
        } catch (IOException failed) {
            throw about("failed", file, failed.getMessage());
        }
    }

    /** A finding that keeps the task from being done. */
    public static Problem problem(Finding finding, String file) {
        return new Problem(
                finding.says(),
                List.of(Message.of("where.place", new Name(file)), finding.where()),
                finding.value(),
                finding.tryThis());
    }

    private static Problem about(String kind, SourceFile file, String value) {
        return Problem.of(
                Message.of("problem.file." + kind),
                Message.of("where.place", new Name(file.name())),
                value,
                Message.of("try.file." + kind));
    }
}
