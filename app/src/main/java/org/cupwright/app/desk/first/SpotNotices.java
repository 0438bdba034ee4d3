package org.cupwright.app.desk.first;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.RotationPolicy;

/** What has to be known of the spots at which holes are, or are to be cut: care, rules set aside, holes too near. */
public final class SpotNotices {
    /** The key of a notice that only says why a spot is to be used with care. */
    public static final String CARE = "first.care";

    private final Course course;
    private final Map<String, JudgedPosition> positions;
    private final double wantedApartMetres;

    private SpotNotices(Course course, Map<String, JudgedPosition> positions, Policy policy) {
        this.course = course;
        this.positions = positions;
        this.wantedApartMetres = policy.get(RotationPolicy.SHARED_GREEN_LEAST_METRES);
    }

    /** The notices of all spots, by hole in round order. */
    public static List<Notice> of(Course course, Map<String, JudgedPosition> positions, Policy policy) {
        SpotNotices spots = new SpotNotices(course, positions, policy);
        List<Notice> notices = new ArrayList<>();
        for (Hole hole : course.round()) {
            Optional.ofNullable(positions.get(hole.id()))
                    .map(JudgedPosition::judgement)
                    .ifPresent(judgement -> {
                        care(hole.id(), judgement, notices);
                        spots.near(hole, judgement.position(), notices);
                    });
        }
        return notices;
    }

    /** With the reason: a rule that asks for care, that is set aside, or that a spot somebody wanted breaks. */
    private static void care(String hole, Judgement judgement, List<Notice> notices) {
        Set<Outcome> told = new HashSet<>();
        if (judgement.verdict() == Verdict.CAUTION) {
            told.add(Outcome.CAUTION);
        } else if (judgement.verdict() == Verdict.FAIL) {
            told.add(Outcome.FAIL);
        }
        for (RuleResult rule : judgement.rules()) {
            if (judgement.setAside().contains(rule.rule())) {
                Translated name = new Translated("rule." + rule.rule().id());
                notices.add(care(hole, Message.of("first.setAside", name, new Said(rule.says()))));
            } else if (told.contains(rule.outcome())) {
                String key = rule.outcome() == Outcome.FAIL ? "first.against" : CARE;
                notices.add(care(hole, Message.of(key, new Said(rule.says()))));
            }
        }
    }

    private static Notice care(String hole, Message says) {
        return Notice.at(hole, Notice.Kind.CARE, says);
    }

    private void near(Hole hole, MapPoint at, List<Notice> notices) {
        for (Hole other : course.sharingGreenWith(hole)) {
            Optional.ofNullable(positions.get(other.id()))
                    .map(position -> position.judgement().position().distanceMetres(at))
                    .filter(apart -> apart < wantedApartMetres)
                    .map(apart -> Message.of(
                            "first.twoHoles", new Name(other.id()), new Length(apart), new Length(wantedApartMetres)))
                    .ifPresent(says -> notices.add(Notice.at(hole.id(), Notice.Kind.TWO_HOLES, says)));
        }
    }
}
