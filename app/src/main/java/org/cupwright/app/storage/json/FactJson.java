package org.cupwright.app.storage.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PayloadKinds;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.jsontype.NamedType;
import tools.jackson.databind.module.SimpleModule;

/**
 * Facts as JSON, the same in the store, in files and between devices: records by the names of their components, choices
 * in lower camel case, moments as ISO instants, places as {@code {"east","north"}} in the course's frame, the payload's
 * kind in its property {@code kind}. What is not known is left out.
 */
public final class FactJson {
    /** Made when the first fact is read or written: commands that need none start faster without it. */
    private static final class Mapper {
        static final JsonMapper INSTANCE = mapper();
        static final ObjectReader FACT = INSTANCE.readerFor(Fact.class);
        static final ObjectReader PAYLOAD = INSTANCE.readerFor(Payload.class);
    }

    private FactJson() {}

    public static String write(Fact fact) {
        return Mapper.INSTANCE.writeValueAsString(fact);
    }

    public static String writePayload(Payload payload) {
        return Mapper.INSTANCE.writerFor(Payload.class).writeValueAsString(payload);
    }

    /**
     * The fact that a JSON text tells.
     *
     * @throws UnreadableFact if it is not JSON, or not that of a fact
     */
    public static Fact read(String json) {
        return readable(() -> Mapper.FACT.readValue(json));
    }

    /**
     * The same in UTF-8.
     *
     * @throws UnreadableFact if it is not JSON, or not that of a fact
     */
    public static Fact read(byte[] json) {
        return readable(() -> Mapper.FACT.readValue(json));
    }

    /**
     * The payload that a JSON text tells.
     *
     * @throws UnreadableFact if it is not JSON, or not that of a payload
     */
    public static Payload readPayload(String json) {
        return readable(() -> Mapper.PAYLOAD.readValue(json));
    }

    private static <T> T readable(Supplier<T> reading) {
        try {
            return Optional.ofNullable(reading.get()).orElseThrow(UnreadableFact::nothing);
        } catch (JacksonException unreadable) {
            throw UnreadableFact.of(unreadable);
        }
    }

    private static JsonMapper mapper() {
        JsonMapper.Builder builder = JsonMapper.builder()
                .addModule(new SimpleModule().addDeserializer(Instant.class, new MomentIn()))
                .annotationIntrospector(new LowerCamelChoices())
                .addMixIn(Payload.class, KindInside.class)
                .addMixIn(Area.class, AreaShapes.class)
                .changeDefaultPropertyInclusion(
                        inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_ABSENT))
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES);
        PayloadKinds.all().forEach((kind, payload) -> builder.registerSubtypes(new NamedType(payload, kind)));
        return builder.build();
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    private interface KindInside {}

    /** A drawn area has corners, a round one a centre: the shape says which it is. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.DEDUCTION)
    @JsonSubTypes({@JsonSubTypes.Type(Area.Drawn.class), @JsonSubTypes.Type(Area.Around.class)})
    private interface AreaShapes {}
}
