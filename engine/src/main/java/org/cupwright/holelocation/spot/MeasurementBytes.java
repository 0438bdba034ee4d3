package org.cupwright.holelocation.spot;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInput;
import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.zip.CRC32;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.BendFit;
import org.cupwright.green.Coverage;
import org.cupwright.green.Green;
import org.cupwright.green.RememberedGround;
import org.cupwright.green.spline.PolynomialSurface;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/**
 * A surveyed green's measurement as bytes, so that it need not be measured again: the fitted surface and the ground at
 * every spot, to the bit, and a checksum. Some 1.2 MB for a green of the invented course.
 *
 * <p>The bytes do not say which green, speed, policy or program they belong to: whoever keeps them keeps that with
 * them.
 */
public final class MeasurementBytes {
    private static final int FORMAT = 1;

    private MeasurementBytes() {}

    /** @param ground the ground of the measured green */
    public static byte[] write(GreenMeasurement measured, SurveyedGround ground) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(FORMAT);
            out.writeDouble(ground.heightStandardErrorMetres());
            out.writeDouble(ground.surveySigmaMetres());
            ground.spline().surface().write(out);
            for (SpotGround spot : measured.grid().spots()) {
                write(spot, out);
            }
            out.writeLong(checksum(bytes.toByteArray(), bytes.size()));
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    private static void write(SpotGround spot, DataOutput out) throws IOException {
        out.writeByte(spot.coverage().ordinal());
        out.writeDouble(spot.slope());
        out.writeDouble(spot.slopeError());
        write(spot.bend(), out);
        write(spot.wideBend(), out);
        out.writeDouble(spot.leave().worstMetres());
        out.writeDouble(spot.leave().meanMetres());
        out.writeInt(spot.leave().headings());
    }

    private static void write(Optional<BendFit.Change> change, DataOutput out) throws IOException {
        out.writeBoolean(change.isPresent());
        if (change.isPresent()) {
            out.writeDouble(change.get().points());
            out.writeDouble(change.get().standardErrorPoints());
        }
    }

    private static long checksum(byte[] bytes, int length) {
        CRC32 sum = new CRC32();
        sum.update(bytes, 0, length);
        return sum.getValue();
    }

    /**
     * The measurement that was written.
     *
     * @param bytes what was kept for this hole, speed and policy
     * @param fit fits the green's ground anew, for what the bytes do not hold
     * @return empty when the bytes are damaged, or of another form: the green has to be measured
     */
    public static Optional<GreenMeasurement> read(
            byte[] bytes, Hole hole, Supplier<SurveyedGround> fit, GreenSpeed speed, Policy policy) {
        int body = bytes.length - Long.BYTES;
        if (body < 0
                || checksum(bytes, body)
                        != ByteBuffer.wrap(bytes, body, Long.BYTES).getLong()) {
            return Optional.empty();
        }
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes, 0, body))) {
            return in.readInt() == FORMAT ? Optional.of(read(in, hole, fit, speed, policy)) : Optional.empty();
        } catch (IOException otherForm) {
            return Optional.empty();
        }
    }

    private static GreenMeasurement read(
            DataInputStream in, Hole hole, Supplier<SurveyedGround> fit, GreenSpeed speed, Policy policy)
            throws IOException {
        double heightError = in.readDouble();
        double sigma = in.readDouble();
        PolynomialSurface surface = PolynomialSurface.read(in);
        Green green =
                new Green(hole, new RememberedGround(new RememberedGround.Fitted(surface, heightError, sigma), fit));
        PuttingArea area = new PuttingArea(hole);
        SpotGrid grid = SpotGrid.of(hole.green(), SpotGrid.meters(green, area, speed, policy), new SpotReader(in));
        return new GreenMeasurement(green, area, grid, speed);
    }

    private static final class SpotReader implements SpotGrid.Source {
        private static final List<Coverage> COVERAGES = List.of(Coverage.values());
        private final DataInput in;

        SpotReader(DataInput in) {
            this.in = in;
        }

        @Override
        public SpotGround at(MapPoint spot) throws IOException {
            Coverage coverage = COVERAGES.get(in.readByte());
            double slope = in.readDouble();
            double slopeError = in.readDouble();
            return new SpotGround(spot, coverage, slope, slopeError, change(), change(), leave());
        }

        private Optional<BendFit.Change> change() throws IOException {
            return in.readBoolean()
                    ? Optional.of(new BendFit.Change(in.readDouble(), in.readDouble()))
                    : Optional.empty();
        }

        private Leave leave() throws IOException {
            return new Leave(in.readDouble(), in.readDouble(), in.readInt());
        }
    }
}
