package org.cupwright.app.store;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.List;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.message.Message;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Courses, plans, level readings and drawn ground as JSON documents: records by the names of their components.
 *
 * <p>What is written here is read back by later versions: a component that is renamed needs a new data format. A list
 * that an older version did not write yet is read as empty. A test reads documents as the first version wrote them.
 */
public final class Documents {
    /** Made when the first document is read or written: commands that need none start faster without it. */
    private static final class Mapper {
        static final JsonMapper INSTANCE = PlaceDocuments.addedTo(JsonMapper.builder())
                .addMixIn(Message.Argument.class, ArgumentNames.class)
                .addMixIn(Learnt.class, LearntNames.class)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .withConfigOverride(
                        List.class, lists -> lists.setNullHandling(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)))
                .build();
    }

    private Documents() {}

    public static String write(Object value) {
        return Mapper.INSTANCE.writeValueAsString(value);
    }

    public static <T> T read(String document, Class<T> type) {
        try {
            return Mapper.INSTANCE.readValue(document, type);
        } catch (JacksonException damaged) {
            throw new IllegalStateException("a stored " + type.getSimpleName() + " cannot be read", damaged);
        }
    }

    /** Why a row could not be read, in the words of what reads it. */
    public static String why(RuntimeException unreadable) {
        Throwable told = unreadable.getCause() == null ? unreadable : unreadable.getCause();
        return String.valueOf(told.getMessage()).lines().findFirst().orElse("");
    }

    /** Which kind of argument it is stands in the property {@code is}. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "is")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Message.Length.class, name = "length"),
        @JsonSubTypes.Type(value = Message.Area.class, name = "area"),
        @JsonSubTypes.Type(value = Message.Slope.class, name = "slope"),
        @JsonSubTypes.Type(value = Message.SlopePoints.class, name = "slopePoints"),
        @JsonSubTypes.Type(value = Message.Direction.class, name = "direction"),
        @JsonSubTypes.Type(value = Message.Count.class, name = "count"),
        @JsonSubTypes.Type(value = Message.Day.class, name = "day"),
        @JsonSubTypes.Type(value = Message.Translated.class, name = "word"),
        @JsonSubTypes.Type(value = Message.Said.class, name = "said"),
        @JsonSubTypes.Type(value = Message.Name.class, name = "name")
    })
    private interface ArgumentNames {}

    /** Which kind of record it is stands in the property {@code is}. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "is")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Learnt.Done.class, name = "done"),
        @JsonSubTypes.Type(value = Learnt.Practised.class, name = "practised"),
        @JsonSubTypes.Type(value = Learnt.SignedOff.class, name = "signedOff"),
        @JsonSubTypes.Type(value = Learnt.Withdrawn.class, name = "withdrawn"),
        @JsonSubTypes.Type(value = Learnt.Trainer.class, name = "trainer"),
        @JsonSubTypes.Type(value = Learnt.Corrected.class, name = "corrected")
    })
    private interface LearntNames {}
}
