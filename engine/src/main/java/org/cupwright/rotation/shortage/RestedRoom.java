package org.cupwright.rotation.shortage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.cupwright.rotation.shortage.GroundNeed.Window;
import org.cupwright.rotation.shortage.Packing.Most;

/**
 * How many holes of a green have to be on resting ground, at least, whatever is planned.
 *
 * <p>Holes of days that follow each other so closely that the first one's ground still rests on the last of them have
 * to be all far enough apart, those apart that are on resting ground. So of a window of such days at least as many are
 * as it wants more than fit; windows without a day in common add up.
 */
public final class RestedRoom {
    /** For each green: our choice, so that a cause is named within seconds. */
    private static final int MOST_QUESTIONS = 3;

    private final GroundNeed need;
    private final Packing packing;

    public RestedRoom(GroundNeed need, Packing packing) {
        this.need = need;
        this.packing = packing;
        askSolver();
    }

    /**
     * Of the widest windows that neither fit surely nor are proved too full; what holds for one holds for its parts.
     */
    private void askSolver() {
        int asked = 0;
        for (int from = 0; from < need.stages().size() && asked < MOST_QUESTIONS; from++) {
            int to = need.lastTogether(from);
            boolean widest = from == 0 || to > need.lastTogether(from - 1);
            BitSet offered = need.offered(from, to);
            if (widest && !packing.fits(offered, to - from + 1)) {
                packing.solve(offered);
                asked++;
            }
        }
    }

    /** The windows without a day in common that together want most more than fits; none where all may fit. */
    public List<Window> windows() {
        int stages = need.stages().size();
        int[] most = new int[stages + 1];
        List<Optional<Window>> taken = new ArrayList<>();
        for (int from = stages - 1; from >= 0; from--) {
            most[from] = most[from + 1];
            Optional<Window> best = Optional.empty();
            for (int to = from; to <= need.lastTogether(from); to++) {
                Window window = window(from, to);
                if (window.tooMany() + most[to + 1] > most[from]) {
                    most[from] = window.tooMany() + most[to + 1];
                    best = Optional.of(window);
                }
            }
            taken.add(0, best);
        }
        List<Window> windows = new ArrayList<>();
        int at = 0;
        while (at < stages) {
            Optional<Window> window = taken.get(at);
            window.ifPresent(windows::add);
            at = window.map(found -> found.to() + 1).orElse(at + 1);
        }
        return windows;
    }

    /** The window that asks for most of what fits: of all widest windows the one with the least to spare. */
    public Window widest() {
        Window worst = window(0, need.lastTogether(0));
        for (int from = 1; from < need.stages().size(); from++) {
            Window window = window(from, need.lastTogether(from));
            worst = spare(window) < spare(worst) ? window : worst;
        }
        return worst;
    }

    private int spare(Window window) {
        return fit(window) - window.wanted();
    }

    /** So many holes of a window surely fit. */
    public int fit(Window window) {
        return Math.min(window.wanted(), packing.fit(need.offered(window.from(), window.to())));
    }

    private Window window(int from, int to) {
        BitSet offered = need.offered(from, to);
        // What fits surely is quickly known, and nothing else need be counted.
        if (packing.fits(offered, to - from + 1)) {
            return new Window(from, to, to - from + 1, false);
        }
        Most most = packing.most(offered);
        return new Window(from, to, Math.min(most.holes(), to - from + 1), most.solved());
    }

    /** So many holes are on resting ground in every plan. */
    public int atLeast() {
        return windows().stream().mapToInt(Window::tooMany).sum();
    }
}
