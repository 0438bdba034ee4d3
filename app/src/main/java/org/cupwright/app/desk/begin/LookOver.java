package org.cupwright.app.desk.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.Where;
import org.cupwright.formats.outlines.RoundOrder;
import org.cupwright.green.findings.GreenSize;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Fifth step: what is still missing before there is a course, and what looks doubtful and may be right. */
public record LookOver(Session session) {
    /** Greens of two holes are farther apart than this, m: our choice. */
    private static final double NEAR_METRES = 8;

    /**
     * Something to look at.
     *
     * @param about what it is about
     * @param says what is so
     * @param tryThis what to do about it
     */
    public record Remark(About about, Message says, Message tryThis) {}

    /** The step on which a remark is mended. */
    public enum About {
        GREENS,
        NUMBERS,
        SETTINGS
    }

    /**
     * What there is.
     *
     * @param stands the course as far as it has come
     * @param missing what keeps it from being one
     * @param doubtful what may be right
     */
    public record Answer(SettingUp stands, List<Remark> missing, List<Remark> doubtful) {}

    public Answer of() {
        return of(new BeginCourse(session).stands());
    }

    static Answer of(SettingUp stands) {
        List<BegunGreen> greens = stands.ofHoles();
        List<Remark> doubtful = new ArrayList<>();
        gaps(greens).ifPresent(doubtful::add);
        greens.forEach(green -> size(green).ifPresent(doubtful::add));
        near(greens, doubtful);
        String unplaced = names(greens.stream().filter(green -> !green.placed()).toList());
        if (!unplaced.isEmpty()) {
            doubtful.add(remark(About.GREENS, "unplaced", new Name(unplaced)));
        }
        if (!greens.isEmpty()
                && greens.stream().allMatch(green -> green.hole().hazards().isEmpty())) {
            doubtful.add(remark(About.GREENS, "noHazards"));
        }
        if (!stands.decided()) {
            doubtful.add(remark(About.SETTINGS, "settings"));
        }
        return new Answer(stands, missing(greens), doubtful);
    }

    private static List<Remark> missing(List<BegunGreen> greens) {
        List<Remark> missing = new ArrayList<>();
        if (greens.isEmpty()) {
            missing.add(remark(About.GREENS, "noGreens"));
        }
        String unnamed = names(greens.stream().filter(green -> !green.named()).toList());
        if (!unnamed.isEmpty()) {
            missing.add(remark(About.NUMBERS, "unnamed", new Name(unnamed)));
        }
        String directionless = names(greens.stream()
                .filter(green -> green.hole().lineOfPlay().isEmpty())
                .toList());
        if (!directionless.isEmpty()) {
            missing.add(remark(About.NUMBERS, "noDirection", new Name(directionless)));
        }
        return missing;
    }

    /** By their holes, else by their numbers on the list of greens. */
    private static String names(List<BegunGreen> greens) {
        return greens.stream()
                .map(green -> green.named() ? green.hole().id() : "#" + green.number())
                .collect(Collectors.joining(", "));
    }

    /** Where all names are numbers, those below the greatest that no green has. */
    private static Optional<Remark> gaps(List<BegunGreen> greens) {
        List<String> names = greens.stream()
                .filter(BegunGreen::named)
                .map(green -> green.hole().id())
                .toList();
        if (!names.stream().allMatch(name -> name.matches("[1-9][0-9]?"))) {
            return Optional.empty();
        }
        TreeSet<String> gone = new TreeSet<>(RoundOrder.byName());
        int greatest = names.stream().mapToInt(Integer::parseInt).max().orElse(0);
        for (int i = 1; i < greatest; i++) {
            gone.add(Integer.toString(i));
        }
        names.forEach(gone::remove);
        return gone.isEmpty()
                ? Optional.empty()
                : Optional.of(remark(About.NUMBERS, "gaps", new Name(String.join(", ", gone))));
    }

    private static Optional<Remark> size(BegunGreen green) {
        Outline outline = green.hole().green();
        Optional<Finding> odd = GreenSize.check(outline, Where.file());
        return odd.map(found ->
                remark(About.GREENS, "size", new Name(names(List.of(green))), new Area(outline.areaSquareMetres())));
    }

    private static void near(List<BegunGreen> greens, List<Remark> doubtful) {
        for (int i = 0; i < greens.size(); i++) {
            for (int j = i + 1; j < greens.size(); j++) {
                near(greens.get(i), greens.get(j)).ifPresent(doubtful::add);
            }
        }
    }

    private static Optional<Remark> near(BegunGreen first, BegunGreen second) {
        if (!first.placed() || !second.placed()) {
            return Optional.empty();
        }
        Outline one = first.hole().green();
        Outline other = second.hole().green();
        Name both = new Name(names(List.of(first, second)));
        if (one.isSameGreenAs(other)) {
            return Optional.of(remark(About.GREENS, "shared", both));
        }
        double apart = IndexedFacetDistance.distance(one.polygon(), other.polygon());
        return apart < NEAR_METRES
                ? Optional.of(remark(About.GREENS, "near", both, new Length(apart)))
                : Optional.empty();
    }

    private static Remark remark(About about, String what, Message.Argument... arguments) {
        return new Remark(
                about, Message.of("begin.look." + what, arguments), Message.of("begin.lookTry." + what, arguments));
    }
}
