package org.cupwright.democourse;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** SHA-256 of texts and of the exact bits of numbers: the same bytes give the same digest, and nothing else does. */
final class Digest {
    private final MessageDigest sha;

    Digest() {
        try {
            sha = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }

    Digest text(String text) {
        sha.update((text + "\n").getBytes(StandardCharsets.UTF_8));
        return this;
    }

    Digest numbers(double... values) {
        for (double value : values) {
            sha.update(ByteBuffer.allocate(Double.BYTES).putDouble(value).array());
        }
        return this;
    }

    Digest points(List<MapPoint> points) {
        points.forEach(point -> numbers(point.east(), point.north()));
        return this;
    }

    Digest geometry(Geometry geometry) {
        for (Coordinate corner : geometry.getCoordinates()) {
            numbers(corner.x, corner.y);
        }
        return this;
    }

    String hex() {
        return HexFormat.of().formatHex(sha.digest());
    }
}
