package org.cupwright.app.cli.log;

import java.nio.file.Path;
import java.util.Map;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.answers.json.Shape;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Writing;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.storage.Photo;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Gives out the photo of something odd. */
@Command(
        name = "photo",
        description = "Writes the photo of something odd to a file, without where and when it was taken.")
final class LogPhotoCommand extends CourseCommand {
    @Parameters(index = "0", paramLabel = "ID", description = "The entry, by the beginning of its id.")
    private String id;

    @Parameters(index = "1", paramLabel = "FILE", description = "The file to write.")
    private Path file;

    @Mixin
    private Writing writing;

    @Override
    protected void run(Task task) {
        Photo photo = new SeeToOdd(task.session()).photo(id);
        writing.write(task, Map.of(file, photo.bytes()));
        Shape said = new Shape()
                .with("file", file.toString())
                .with("sha256", photo.hash())
                .with("bytes", photo.bytes().length);
        task.answer(said, () -> new Lines(task.texts()).say("log.photoWritten", file.toString()));
    }
}
