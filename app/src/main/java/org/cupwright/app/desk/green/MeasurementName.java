package org.cupwright.app.desk.green;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cupwright.app.storage.Sha256;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.green.LevelReading;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKBWriter;

/**
 * Names a green's measurement by everything it depends on: outline and hazards, survey, level readings, green speed and
 * what the course has set about measuring. The name is the SHA-256 of all that, so another name means another
 * measurement and nothing has to be cleared.
 */
public final class MeasurementName {
    /** Begin the names of settings of what comes after measuring: none of the engine's measuring knows them. */
    private static final Set<String> LATER = Set.of("turf", "rotation", "desk", "paper", "round");

    private final DataOutputStream out;

    private MeasurementName(DataOutputStream out) {
        this.out = out;
    }

    public static String of(
            Hole hole, SurveyPoints survey, List<LevelReading> readings, GreenSpeed speed, Policy policy) {
        MessageDigest digest = Sha256.digest();
        OutputStream bytes = new DigestOutputStream(OutputStream.nullOutputStream(), digest);
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(bytes))) {
            MeasurementName name = new MeasurementName(out);
            name.hole(hole);
            name.survey(survey);
            name.text(readings.toString());
            out.writeDouble(speed.feet());
            for (Map.Entry<String, String> setting : policy.set().entrySet()) {
                if (!LATER.contains(setting.getKey().split("[.]", 2)[0])) {
                    name.text(setting.getKey());
                    name.text(setting.getValue());
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to nowhere failed", impossible);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private void hole(Hole hole) throws IOException {
        text(hole.id());
        geometry(hole.green().polygon());
        for (Hazard hazard : hole.hazards()) {
            text(hazard.kind().name());
            geometry(hazard.area());
        }
    }

    private void geometry(Geometry geometry) throws IOException {
        bytes(new WKBWriter().write(geometry));
    }

    private void survey(SurveyPoints survey) throws IOException {
        out.writeInt(survey.count());
        for (int i = 0; i < survey.count(); i++) {
            out.writeDouble(survey.east(i));
            out.writeDouble(survey.north(i));
            out.writeDouble(survey.heightMetres(i));
        }
        out.writeDouble(survey.gridCellMetres().orElse(Double.NaN));
        out.writeDouble(survey.givenSigmaMetres().orElse(Double.NaN));
        text(survey.kind().map(SurveyKind::name).orElse(""));
        text(survey.measured().map(SharedAmplitude::toString).orElse(""));
    }

    private void text(String text) throws IOException {
        bytes(text.getBytes(StandardCharsets.UTF_8));
    }

    /** With its length before it, so that two neighbours never read as two others. */
    private void bytes(byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }
}
