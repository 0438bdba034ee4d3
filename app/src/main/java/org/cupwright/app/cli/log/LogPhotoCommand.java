package org.cupwright.app.cli.log;

import java.nio.file.Path;
import org.cupwright.app.answers.json.Shape;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.NewFile;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.storage.Photo;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Gives out the photo of something odd. */
@Command(name = "photo", description = "Writes the photo of something odd to a file, as it came from the camera.")
final class LogPhotoCommand extends CourseCommand {
    @Parameters(index = "0", paramLabel = "ID", description = "The entry, by the beginning of its id.")
    private String id;

    @Parameters(index = "1", paramLabel = "FILE", description = "The file to write; it must not be there yet.")
    private Path file;

    @Override
    protected void run(Task task) {
        Photo photo = new SeeToOdd(task.session()).photo(id);
        new NewFile(file).write(photo.bytes());
        Shape said = new Shape()
                .with("file", file.toString())
                .with("sha256", photo.hash())
                .with("bytes", photo.bytes().length);
        if (!new LogPrint(task).isJson(said)) {
            task.print(task.texts().say("log.photoWritten", file.toString()));
        }
    }
}
