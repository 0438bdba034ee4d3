package org.cupwright.app.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.IntToDoubleFunction;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.cupwright.green.SurveyPoints;

/**
 * Surveyed points as one compact value: gzip of all easts, all norths, all heights, as the exact numbers that were
 * read.
 */
public final class PointBlob {
    private PointBlob() {}

    static byte[] write(SurveyPoints points) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(bytes))) {
            column(points.count(), points::east, out);
            column(points.count(), points::north, out);
            column(points.count(), points::heightMetres, out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** Reads points written by {@link #write}; a cell and a σ make them a grid's, NaN for both scattered ones. */
    public static SurveyPoints read(byte[] blob, int count, double cellMetres, double sigmaMetres) {
        try (DataInputStream in = new DataInputStream(new GZIPInputStream(new ByteArrayInputStream(blob)))) {
            double[] east = column(count, in);
            double[] north = column(count, in);
            double[] height = column(count, in);
            return Double.isNaN(cellMetres)
                    ? SurveyPoints.scattered(east, north, height)
                    : SurveyPoints.grid(cellMetres, sigmaMetres, east, north, height);
        } catch (IOException damaged) {
            throw new UncheckedIOException(damaged);
        }
    }

    private static void column(int count, IntToDoubleFunction value, DataOutputStream out) throws IOException {
        for (int i = 0; i < count; i++) {
            out.writeDouble(value.applyAsDouble(i));
        }
    }

    private static double[] column(int count, DataInputStream in) throws IOException {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = in.readDouble();
        }
        return values;
    }
}
