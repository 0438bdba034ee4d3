package org.cupwright.formats.outlines;

import java.io.IOException;
import java.io.InputStream;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.BoundedInput;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON from outside, bounded in bytes and nesting. */
final class JsonText {
    /** A traced course takes some hundred kilobytes; a whole county's map data some ten megabytes. Our choice. */
    static final long MAX_BYTES = 64L << 20;

    /** A MultiPolygon inside a FeatureCollection nests nine deep. Our choice. */
    static final int MAX_NESTING = 40;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MAX_NESTING)
                            .maxDocumentLength(MAX_BYTES)
                            .build())
                    .build())
            .build();

    private JsonText() {}

    /**
     * @throws UnreadableFile if there is nothing in it, it is no JSON, or it is beyond the bounds
     */
    static JsonNode read(InputStream in) throws IOException {
        try {
            JsonNode root = MAPPER.readTree(BoundedInput.withoutMark(in, MAX_BYTES));
            if (root.isMissingNode() || root.isNull()) {
                throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), new Message.Count(0))
                        .failure();
            }
            return root;
        } catch (JacksonException e) {
            throw unreadable(e);
        }
    }

    private static UnreadableFile unreadable(JacksonException e) {
        TokenStreamLocation at = e.getLocation();
        Message where = at == null || at.getLineNr() < 1
                ? Where.file()
                : Where.lineAndColumn(at.getLineNr(), Math.max(1, at.getColumnNr()));
        Message.Argument said = new Message.Name(Excerpt.of(String.valueOf(e.getOriginalMessage())));
        return Finding.of(FindingKind.NOT_READABLE, where, said).failure(e);
    }
}
