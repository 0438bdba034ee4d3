package org.cupwright.cupchange.check;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CrewNote;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;

/**
 * Asks about facts that look wrong: a place off the green, inches typed as millimetres, a clock that runs ahead. What can never be
 * right is refused by the records themselves.
 */
public final class FactCheck {
    /** A hole less deep than this was hardly measured in millimetres (our choice: the rules ask for 101.6 mm). */
    private static final double SHALLOWEST_HOLE_MILLIMETRES = 50;

    /** A cup's rim less far down than this was hardly measured in millimetres (our choice: the rules ask for 25.4 mm). */
    private static final double SHALLOWEST_CUP_MILLIMETRES = 8;

    /** Deeper than any cutter reaches (our choice). */
    private static final double DEEPEST_HOLE_MILLIMETRES = 300;

    /** Deeper than a rim that still holds the flagstick in place (our choice). */
    private static final double DEEPEST_CUP_MILLIMETRES = 100;

    /** Drawn outlines are good to about a metre: nearer than this to the edge nothing is asked (our choice). */
    private static final double OUTLINE_ERROR_METRES = 1;

    /** How far ahead of its own recording a fact may have happened: clocks differ (our choice). */
    private static final Duration CLOCK_ERROR = Duration.ofMinutes(10);

    private final Course course;

    public FactCheck(Course course) {
        this.course = course;
    }

    /** What to ask about a fact; empty when it looks right. */
    public List<FactFinding> check(Fact fact) {
        List<Message> asks = new ArrayList<>();
        if (fact.happenedAt().isAfter(fact.recordedAtDevice().plus(CLOCK_ERROR))) {
            asks.add(Message.of("fact.happenedAfterRecorded"));
        }
        Optional<Hole> hole = fact.hole().flatMap(course::find);
        if (fact.hole().isPresent() && hole.isEmpty()) {
            asks.add(Message.of("fact.noSuchHole", new Message.Name(fact.hole().orElseThrow())));
        }
        Payload said = fact.payload() instanceof Correction correction
                ? correction.replacement().orElse(correction)
                : fact.payload();
        hole.ifPresent(known -> checkPlaces(known, said, asks));
        checkMeasures(said, asks);
        return asks.stream().map(ask -> new FactFinding(fact.id(), ask)).toList();
    }

    private static void checkPlaces(Hole hole, Payload payload, List<Message> asks) {
        for (MapPoint place : Places.onGreen(payload)) {
            double off = hole.green().distanceToEdgeMetres(place);
            if (!hole.green().contains(place) && off > OUTLINE_ERROR_METRES) {
                asks.add(Message.of("fact.offTheGreen", new Message.Name(hole.id()), new Message.Length(off)));
            }
        }
    }

    private static void checkMeasures(Payload payload, List<Message> asks) {
        if (payload instanceof CupWork.SpotCheck check) {
            checkDepth(
                    "holeDepth",
                    check.holeDepthMillimetres(),
                    SHALLOWEST_HOLE_MILLIMETRES,
                    DEEPEST_HOLE_MILLIMETRES,
                    asks);
            checkDepth(
                    "cupDepth", check.cupDepthMillimetres(), SHALLOWEST_CUP_MILLIMETRES, DEEPEST_CUP_MILLIMETRES, asks);
        } else if (payload instanceof CrewNote.StopSet stop) {
            checkDepth(
                    "stopDepth",
                    OptionalDouble.of(stop.depthMillimetres()),
                    SHALLOWEST_HOLE_MILLIMETRES,
                    DEEPEST_HOLE_MILLIMETRES,
                    asks);
        }
    }

    private static void checkDepth(
            String what, OptionalDouble millimetres, double least, double greatest, List<Message> asks) {
        if (millimetres.isEmpty() || (millimetres.getAsDouble() >= least && millimetres.getAsDouble() <= greatest)) {
            return;
        }
        double value = millimetres.getAsDouble();
        double asInches = value * 25.4;
        Message.Length typed = new Message.Length(value / 1000);
        boolean inches = asInches >= least && asInches <= greatest;
        asks.add(
                inches
                        ? Message.of(
                                "fact.inchesForMillimetres",
                                new Message.Word("measure." + what),
                                typed,
                                new Message.Length(asInches / 1000))
                        : Message.of("fact.unlikelyMeasure", new Message.Word("measure." + what), typed));
    }
}
