package org.cupwright.formats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateTransformFactory;
import org.locationtech.proj4j.ProjCoordinate;

/** Frames that are made without the list of codes are those of the list (EPSG, as PROJ's {@code nad/epsg} has them). */
class CoordinateFrameTest {
    private static final Pattern ENTRY = Pattern.compile("(?m)^<(\\d+)> (.*?) *<>");
    private static final int DEGREES_AND_ZONES = 1 + 11 + 60 + 60;

    private static Map<Integer, String> list() throws IOException {
        try (InputStream in = CRSFactory.class.getResourceAsStream("/proj4/nad/epsg")) {
            Matcher entries = ENTRY.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            Map<Integer, String> list = new HashMap<>();
            while (entries.find()) {
                list.put(Integer.valueOf(entries.group(1)), entries.group(2));
            }
            return list;
        }
    }

    @Test
    void parametersAreThoseOfTheList() throws IOException {
        Map<Integer, String> list = list();
        int compared = 0;
        for (int epsg : IntStream.rangeClosed(1, 33_000).toArray()) {
            if (CoordinateFrame.parameters(epsg).isPresent()) {
                assertThat(CoordinateFrame.parameters(epsg)).as("EPSG:%d", epsg).contains(list.get(epsg));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(DEGREES_AND_ZONES);
    }

    @ParameterizedTest
    @ValueSource(ints = {25832, 32632, 32756})
    void placesAreThoseOfTheListToTheBit(int epsg) {
        CRSFactory factory = new CRSFactory();
        ProjCoordinate expected = new ProjCoordinate();
        new CoordinateTransformFactory()
                .createTransform(factory.createFromName("EPSG:" + epsg), factory.createFromName("EPSG:4326"))
                .transform(new ProjCoordinate(512_345.678, 5_432_109.876), expected);
        Projection toDegrees = Projection.between(CoordinateFrame.of(epsg), CoordinateFrame.of(CoordinateFrame.WGS84));
        assertThat(toDegrees.apply(512_345.678, 5_432_109.876).getX()).isEqualTo(expected.x);
        assertThat(toDegrees.apply(512_345.678, 5_432_109.876).getY()).isEqualTo(expected.y);
    }
}
