package org.cupwright.app.desk.turf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.cupwright.turf.state.TurfState;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** A kept state of the turf as bytes, JSON within gzip, whose check sum finds damage; read by the build that wrote it only. */
final class TurfStateBytes {
    /** Made when the first state is read or written: commands that need none start faster without it. */
    private static final class Mapper {
        static final JsonMapper INSTANCE = JsonMapper.builder()
                .addModule(new SimpleModule()
                        .addSerializer(Geometry.class, new GeometryOut())
                        .addDeserializer(Geometry.class, new GeometryIn()))
                .build();
    }

    private TurfStateBytes() {}

    static byte[] write(TurfState state) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(bytes)) {
            out.write(Mapper.INSTANCE.writeValueAsBytes(state));
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    /** Empty when the bytes are damaged: the state is then made anew. */
    static Optional<TurfState> read(byte[] bytes) {
        try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return Optional.of(Mapper.INSTANCE.readValue(in.readAllBytes(), TurfState.class));
        } catch (IOException | JacksonException damaged) {
            return Optional.empty();
        }
    }

    /** To the bit, as a binary value. */
    private static final class GeometryOut extends ValueSerializer<Geometry> {
        @Override
        public void serialize(Geometry geometry, JsonGenerator out, SerializationContext context) {
            out.writeBinary(new WKBWriter().write(geometry));
        }
    }

    private static final class GeometryIn extends ValueDeserializer<Geometry> {
        @Override
        public Geometry deserialize(JsonParser in, DeserializationContext context) {
            try {
                return new WKBReader().read(in.getBinaryValue());
            } catch (ParseException damaged) {
                throw DatabindException.from(in, "not a geometry", damaged);
            }
        }
    }
}
