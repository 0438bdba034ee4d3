package org.cupwright.app.answers;

import java.nio.file.Path;
import org.cupwright.app.storage.SurveyVersion;

/** A survey of a green in words. */
public final class SurveyText {
    private SurveyText() {}

    /** The file it came from, by its name alone. */
    public static String file(SurveyVersion version) {
        return Path.of(version.origin().file()).getFileName().toString();
    }
}
