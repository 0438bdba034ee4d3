package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.InProcess.Result;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Holds what {@code --json} writes to the published schemas. */
final class PublishedShapes {
    private static final Path SCHEMAS = Path.of("../docs/schemas");

    private PublishedShapes() {}

    static JsonNode checked(String schemaName, Result result) throws IOException {
        String text = Files.readString(SCHEMAS.resolve(schemaName + ".schema.json"));
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text, InputFormat.JSON);
        List<Error> errors = schema.validate(result.out(), InputFormat.JSON);
        assertThat(errors).as(result.out() + result.err()).isEmpty();
        return JsonMapper.shared().readTree(result.out());
    }
}
