package org.cupwright.app.cli.log;

import java.nio.file.Path;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.NewFile;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.storage.Photo;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.node.ObjectNode;

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
        if (task.options().json()) {
            ObjectNode node = Json.object();
            node.put("file", file.toString());
            node.put("sha256", photo.hash());
            node.put("bytes", photo.bytes().length);
            task.print(Json.document(node));
        } else {
            task.print(task.texts().say("log.photoWritten", file.toString()));
        }
    }
}
