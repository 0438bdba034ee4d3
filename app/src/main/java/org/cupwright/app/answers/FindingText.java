package org.cupwright.app.answers;

import java.nio.file.Path;
import java.util.Optional;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.texts.Texts;
import org.cupwright.finding.Finding;

/** What is doubtful, in words. */
public final class FindingText {
    private FindingText() {}

    /** The file, by its name alone, and where in it. */
    public static String where(Texts texts, FileFinding found) {
        return Path.of(found.file()).getFileName() + ", "
                + texts.say(found.finding().where());
    }

    /** What was found, and where. */
    public static String says(Texts texts, Finding finding, Optional<String> where) {
        return texts.say(finding.says()) + where.map(text -> " (" + text + ")").orElse("");
    }
}
