package org.cupwright.app.answers.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Building blocks of the JSON documents: numbers to four decimals, null where nothing is known. */
public final class Json {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Json() {}

    public static ObjectNode object() {
        return NODES.objectNode();
    }

    /** A number to 0.0001; null where it is not a finite one. */
    public static JsonNode number(double value) {
        if (!Double.isFinite(value)) {
            return NODES.nullNode();
        }
        BigDecimal rounded = new BigDecimal(value).setScale(4, RoundingMode.HALF_EVEN);
        BigDecimal plain = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        return NODES.numberNode(plain.scale() < 0 ? plain.setScale(0) : plain);
    }

    public static JsonNode number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : NODES.nullNode();
    }

    /** The document as it is written, in lines. */
    public static String document(JsonNode node) {
        return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(node);
    }
}
