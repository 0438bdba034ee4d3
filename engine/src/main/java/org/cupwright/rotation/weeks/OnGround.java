package org.cupwright.rotation.weeks;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.OtherGround;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** Candidates that were judged on clear ground, as they are on the ground of a day. */
final class OnGround {
    private final GroundOnDay ground;
    private final OtherGround rules;
    private final List<MapPoint> resting;
    private final List<MapPoint> last;
    private final List<MapPoint> plugs;
    private final List<Geometry> saved;
    private final double restMetres;
    private final double lastMetres;
    private final double plugMetres;

    OnGround(GroundOnDay ground, Policy policy) {
        this.ground = ground;
        this.rules = new OtherGround(ground, policy);
        this.resting = points(ground, Kind.OLD_HOLE);
        this.plugs = points(ground, Kind.PLUG);
        this.last = ground.lastHoles(policy.get(DistancePolicy.LAST_HOLES), policy.get(DistancePolicy.LAST_HOLES_DAYS));
        this.saved = ground.counting(Kind.SAVED).stream().map(GroundItem::place).toList();
        this.restMetres = policy.get(DistancePolicy.OLD_HOLE_METRES);
        this.lastMetres = policy.get(DistancePolicy.LAST_HOLES_METRES);
        this.plugMetres = policy.get(DistancePolicy.PLUG_METRES);
    }

    private static List<MapPoint> points(GroundOnDay ground, Kind kind) {
        return ground.counting(kind).stream()
                .map(item -> MapPoint.of(item.place().getCoordinate()))
                .toList();
    }

    List<Candidate> of(List<Candidate> candidates) {
        return ground.items().isEmpty()
                ? candidates
                : candidates.stream()
                        .map(one -> of(one, rules.of(one.judgement())))
                        .toList();
    }

    /** The same wishes, a locked spot as it is on this ground. */
    Wishes of(Wishes wishes) {
        Optional<Candidate> locked =
                wishes.locked().map(spot -> of(List.of(spot)).get(0));
        return wishes.withLocked(locked);
    }

    /** A spot that is to have a hole though the ground about an old one still rests. */
    Candidate setAside(Candidate candidate) {
        return of(candidate, rules.setAside(candidate.judgement()));
    }

    private Candidate of(Candidate candidate, Judgement judged) {
        return new Candidate(judged, candidate.place(), room(candidate, judged), isSaved(judged.position()));
    }

    /** As far as the ground's shape leaves room, and what lies on it: to where the verdict would be worse. */
    private double room(Candidate candidate, Judgement judged) {
        MapPoint at = judged.position();
        double room = Math.min(candidate.goodWithinMetres(), nearest(at, resting) - restMetres);
        if (judged.verdict() == Verdict.PASS) {
            room = Math.min(room, Math.min(nearest(at, last) - lastMetres, nearest(at, plugs) - plugMetres));
        }
        return Math.max(0, room);
    }

    private static double nearest(MapPoint at, List<MapPoint> points) {
        return points.stream().mapToDouble(at::distanceMetres).min().orElse(Double.POSITIVE_INFINITY);
    }

    private boolean isSaved(MapPoint at) {
        Point point = at.toPoint();
        return saved.stream().anyMatch(area -> area.covers(point));
    }
}
