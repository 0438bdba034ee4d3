package org.cupwright.turf.state;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.CrewNote;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.SpotCheck;
import org.cupwright.cupchange.DayReading.RoundsPlayed;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote.Frost;
import org.cupwright.cupchange.Payload;
import org.cupwright.turf.state.GreenSteps.GreenStep;

/**
 * Takes facts, in the logbook's order, into a state. Going on from a kept state gives the same as starting from
 * nothing, because every step depends on the state and the fact alone.
 */
public final class TurfFold {
    private final ZoneId zone;
    private final Map<String, GreenState> greens;
    private final Map<String, CutterState> cutters;
    private Optional<FactMark> last;
    private CourseState course;
    private long facts;

    private TurfFold(TurfState start) {
        this.zone = start.zone();
        this.greens = new HashMap<>(start.greens());
        this.cutters = new HashMap<>(start.cutters());
        this.last = start.last();
        this.course = start.course();
        this.facts = start.facts();
    }

    /**
     * @param start nothing, or a kept state
     * @param facts those of the logbook that come after it, in the logbook's order
     * @throws IllegalArgumentException if a fact comes out of order: go on from an earlier one then
     */
    public static TurfState fold(TurfState start, List<Fact> facts) {
        TurfFold fold = new TurfFold(start);
        facts.forEach(fold::add);
        return fold.state();
    }

    private TurfState state() {
        return new TurfState(zone, last, greens, cutters, course, facts);
    }

    private void add(Fact fact) {
        FactMark mark = FactMark.of(fact);
        if (last.isPresent() && last.get().compareTo(mark) >= 0) {
            throw new IllegalArgumentException("fact " + fact.id() + " of " + fact.happenedAt()
                    + " comes before the state's last, of " + last.get().happenedAt()
                    + "; go on from a kept state before it");
        }
        last = Optional.of(mark);
        facts++;
        LocalDate day = dayOf(fact.happenedAt());
        fact.hole().ifPresentOrElse(hole -> addToGreen(hole, fact.payload(), day), () -> addToCourse(fact, day));
        if (fact.payload() instanceof CrewNote note) {
            addToCutters(note, day);
        }
    }

    private LocalDate dayOf(Instant moment) {
        return LocalDate.ofInstant(moment, zone);
    }

    private void addToGreen(String hole, Payload payload, LocalDate day) {
        Optional<GreenStep<Payload>> step = GreenSteps.find(payload);
        if (step.isPresent()) {
            GreenState known = greens.get(hole);
            greens.put(hole, step.get().after(known == null ? GreenState.of(hole) : known, payload, day));
        } else if (payload instanceof SpotCheck check) {
            course = course.checked(hole, check, day);
        } else {
            addToCourse(payload, day);
        }
        if (payload instanceof CupChanged changed) {
            changed.cutter().ifPresent(name -> changeCutter(name, cutter -> cutter.cut(hole, changed, day)));
        }
    }

    private void addToCourse(Fact fact, LocalDate day) {
        if (fact.payload() instanceof CareWork work) {
            course = course.cared(work, day);
            greens.replaceAll((hole, green) -> green.disturbedBy(work, day));
        } else if (fact.payload() instanceof SpeedRead read) {
            course = course.read(read.speed().feet());
        } else {
            addToCourse(fact.payload(), day);
        }
    }

    /** What is of the course whether or not somebody named a hole. */
    private void addToCourse(Payload payload, LocalDate day) {
        if (payload instanceof RoundsPlayed played) {
            course = course.played(played, day);
        } else if (payload instanceof Frost frost) {
            course = course.frost(frost.onGreens());
        }
    }

    private void addToCutters(CrewNote note, LocalDate day) {
        if (note instanceof CrewNote.ToolSharpened sharpened) {
            changeCutter(sharpened.cutter(), cutter -> cutter.sharpened(day));
        } else if (note instanceof CrewNote.StopSet stop) {
            changeCutter(stop.cutter(), cutter -> cutter.stopSet(stop.depthMillimetres(), day));
        }
    }

    private void changeCutter(String name, UnaryOperator<CutterState> change) {
        CutterState known = cutters.get(name);
        cutters.put(name, change.apply(known == null ? CutterState.of(name) : known));
    }
}
