package org.cupwright.app.answers.json;

import java.nio.file.Path;
import org.cupwright.app.storage.SurveyVersion;
import tools.jackson.databind.node.ObjectNode;

/** A survey of a green as scripts read it. */
public final class SurveyJson {
    private SurveyJson() {}

    public static String file(SurveyVersion version) {
        return Path.of(version.origin().file()).getFileName().toString();
    }

    public static ObjectNode json(SurveyVersion version) {
        ObjectNode node = Json.object();
        node.put("version", version.number());
        node.put("importedAt", version.recordedAt().toString());
        node.put("points", version.points());
        node.put("file", file(version));
        return node;
    }
}
