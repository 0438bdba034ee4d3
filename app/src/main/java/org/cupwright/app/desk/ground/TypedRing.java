package org.cupwright.app.desk.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Problem;
import org.cupwright.units.Paces;
import org.cupwright.units.WrittenNumber;

/**
 * Reads corners as they are typed or clicked: a line each, paces on and paces to the right or left of the line of play,
 * as {@code 12 L4.5}, {@code 12 -4.5} or {@code 12,5; R3}.
 *
 * @param grid from which the paces are counted
 * @param known corners that are there: one that is written as it stands is the very same, however it was rounded
 */
public record TypedRing(PaceGrid grid, List<MapPoint> known) {
    static final String FIELD = "corners";

    /** More no edge needs: our choice. */
    private static final int MOST = 500;

    private static final int FEWEST = 3;

    /** A corner is off by hundreds of metres: no ground that is drawn reaches so far from its green, m. Our choice. */
    private static final double FARTHEST_METRES = 150;

    public TypedRing {
        known = List.copyOf(known);
    }

    /**
     * The corners, none of them twice over.
     *
     * @throws Problem where a line is no corner, or there are too few or too many, or one is far off
     */
    public List<MapPoint> read(String text) {
        List<MapPoint> corners = new ArrayList<>();
        int line = 0;
        for (String written : text.split("\\R")) {
            line++;
            if (!written.isBlank()) {
                MapPoint corner = corner(written.strip(), line);
                if (corners.isEmpty() || !corners.get(corners.size() - 1).equals(corner)) {
                    corners.add(corner);
                }
            }
        }
        if (corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1))) {
            corners.remove(corners.size() - 1);
        }
        if (corners.size() < FEWEST || corners.size() > MOST) {
            throw Problem.of("ground.corners", FIELD, corners.size(), new Count(corners.size()), new Count(MOST));
        }
        return corners;
    }

    private MapPoint corner(String written, int line) {
        String[] parts = written.split("[,;]?\\s+|;\\s*");
        Optional<Double> on = WrittenNumber.find(parts[0]);
        Optional<Double> right = parts.length == 2 ? right(parts[1]) : Optional.empty();
        if (on.isEmpty() || right.isEmpty()) {
            throw Problem.of("ground.corner", FIELD, written, new Count(line));
        }
        double away = Paces.toMetres(Math.hypot(on.get(), right.get()), grid.paceMetres());
        if (away > FARTHEST_METRES) {
            throw Problem.of("ground.far", FIELD, written, new Count(line), new Length(away));
        }
        return known.stream()
                .filter(corner -> isWritten(corner, on.get(), right.get()))
                .findFirst()
                .orElseGet(() -> grid.ground(on.get(), right.get()));
    }

    /** To the right; a number with L before it, or one below 0, is to the left. */
    private static Optional<Double> right(String written) {
        String plain = written.toUpperCase(Locale.ROOT);
        boolean side = plain.startsWith("L") || plain.startsWith("R");
        Optional<Double> paces = WrittenNumber.find(side ? plain.substring(1) : plain);
        return plain.startsWith("L") ? paces.map(number -> -number) : paces;
    }

    private boolean isWritten(MapPoint corner, double on, double right) {
        double half = 0.005 + 1e-9; // of the last figure that is written
        return Math.abs(grid.on(corner) - on) <= half && Math.abs(grid.right(corner) - right) <= half;
    }

    /** Corners as they are typed, a line each. */
    public static String written(PaceGrid grid, List<MapPoint> corners) {
        return String.join("\n", corners.stream().map(grid::written).toList());
    }
}
