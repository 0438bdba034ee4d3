package org.cupwright.holelocation.spot;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Green;
import org.cupwright.green.GreenLattice;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/**
 * The ground at every spot of a green's lattice that lies within its outline, measured once for one green speed.
 *
 * <p>Rows are measured by several threads; every spot is measured by itself, so the answers do not depend on how many.
 */
public final class SpotGrid {
    private final Supplier<SpotMeter> meters;
    private final GreenLattice lattice;
    private final SpotGround[] spots;
    private final int[] inside;

    /** Where spots come from that were measured earlier. */
    interface Source {
        SpotGround at(MapPoint spot) throws IOException;
    }

    private SpotGrid(Supplier<SpotMeter> meters, GreenLattice lattice, SpotGround[] spots) {
        this.meters = meters;
        this.lattice = lattice;
        this.spots = spots;
        this.inside = IntStream.range(0, spots.length)
                .filter(cell -> spots[cell] != null)
                .toArray();
    }

    static SpotGrid measure(Green green, PuttingArea area, GreenSpeed speed, Policy policy) {
        Outline outline = green.hole().green();
        GreenLattice lattice = GreenLattice.over(outline, 0);
        Supplier<SpotMeter> meters = meters(green, area, speed, policy);
        SpotGround[] spots = new SpotGround[lattice.size()];
        IntStream.range(0, lattice.rows()).parallel().forEach(row -> {
            SpotMeter meter = meters.get();
            for (int cell = row * lattice.columns(); cell < (row + 1) * lattice.columns(); cell++) {
                MapPoint spot = lattice.spot(cell);
                if (outline.contains(spot)) {
                    spots[cell] = meter.at(spot);
                }
            }
        });
        return new SpotGrid(meters, lattice, spots);
    }

    /**
     * Spots that were measured earlier.
     *
     * @param measured asked for every cell within the outline, in the order of {@link #cells()}
     */
    static SpotGrid of(Outline outline, Supplier<SpotMeter> meters, Source measured) throws IOException {
        GreenLattice lattice = GreenLattice.over(outline, 0);
        SpotGround[] spots = new SpotGround[lattice.size()];
        for (int cell = 0; cell < spots.length; cell++) {
            MapPoint spot = lattice.spot(cell);
            if (outline.contains(spot)) {
                spots[cell] = measured.at(spot);
            }
        }
        return new SpotGrid(meters, lattice, spots);
    }

    static Supplier<SpotMeter> meters(Green green, PuttingArea area, GreenSpeed speed, Policy policy) {
        return () -> new SpotMeter(
                green.ground(), new LeaveMeter(green.ground().surface(), area, speed, policy), speed, policy);
    }

    public GreenLattice lattice() {
        return lattice;
    }

    /** A meter by which the lattice was measured, for other spots; for one thread. */
    public SpotMeter meter() {
        return meters.get();
    }

    /** The cells within the outline, row by row from the south-west. */
    public IntStream cells() {
        return Arrays.stream(inside);
    }

    /** How many cells lie within the outline. */
    public int size() {
        return inside.length;
    }

    /** The ground at a cell within the outline. */
    public SpotGround get(int cell) {
        return Objects.requireNonNull(spots[cell], () -> "cell " + cell + " lies outside the green's outline");
    }

    /** The ground at a cell; empty outside the outline and outside the lattice. */
    public Optional<SpotGround> find(int column, int row) {
        boolean outside = column < 0 || row < 0 || column >= lattice.columns() || row >= lattice.rows();
        return outside ? Optional.empty() : Optional.ofNullable(spots[row * lattice.columns() + column]);
    }

    /** The cell of a spot that was measured with the lattice; −1 for any other. */
    public int cellOf(SpotGround spot) {
        int cell = lattice.nearest(spot.at());
        return cell >= 0 && spots[cell] == spot ? cell : -1;
    }

    /** The cell whose spot is exactly this point; empty between spots and off the green. */
    public Optional<SpotGround> findExactly(MapPoint point) {
        int cell = lattice.nearest(point);
        return cell < 0
                ? Optional.empty()
                : Optional.ofNullable(spots[cell]).filter(spot -> spot.at().equals(point));
    }

    /** All spots within the outline, in the order of {@link #cells()}. */
    public List<SpotGround> spots() {
        return cells().mapToObj(this::get).toList();
    }
}
