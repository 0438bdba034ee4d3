package org.cupwright.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Lateral;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Side;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;

/**
 * Invented greens for the planning benchmarks: thirty metres square, candidates on two to four patches of a given
 * radius, a quarter of them to be used with care, none with more than two metres of room.
 */
final class MadeCandidates {
    private static final double SIZE_METRES = 30;
    private static final List<RuleResult> RULES =
            Arrays.stream(RuleId.values()).map(MadeCandidates::notChecked).toList();

    private MadeCandidates() {}

    static List<GreenCandidates> greens(long seed, int greens, int candidates, double patchMetres) {
        Random random = new Random(seed);
        List<GreenCandidates> made = new ArrayList<>();
        for (int i = 0; i < greens; i++) {
            List<Candidate> all = new ArrayList<>();
            List<MapPoint> patches = Stream.generate(() -> point(random))
                    .limit(2 + random.nextInt(3))
                    .toList();
            while (all.size() < candidates) {
                MapPoint at = point(random);
                if (patches.stream().anyMatch(patch -> patch.distanceMetres(at) < patchMetres)) {
                    all.add(candidate(random, at));
                }
            }
            made.add(new GreenCandidates(Integer.toString(i + 1), all, Optional.of(point(random)), Wishes.none()));
        }
        return made;
    }

    private static Candidate candidate(Random random, MapPoint at) {
        Verdict verdict = random.nextInt(4) == 0 ? Verdict.CAUTION : Verdict.PASS;
        Difficulty difficulty = new Difficulty(
                OptionalDouble.empty(),
                Optional.of(List.of(DifficultyClass.values()).get(random.nextInt(3))),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Judgement judgement = new Judgement(at, verdict, RestsOn.SURVEY, RULES, Set.of(), difficulty, Optional.empty());
        return new Candidate(judgement, Optional.of(place(at)), 2 * random.nextDouble(), false);
    }

    private static MapPoint point(Random random) {
        return new MapPoint(4 + 22 * random.nextDouble(), 4 + 22 * random.nextDouble());
    }

    private static PlaceOnGreen place(MapPoint at) {
        Third third = List.of(Third.values()).get((int) (at.north() / 10));
        Lateral lateral = List.of(Lateral.values()).get((int) (at.east() / 10));
        Side side = at.east() < SIZE_METRES / 2 ? Side.LEFT : Side.RIGHT;
        double sideMetres = Math.min(at.east(), SIZE_METRES - at.east());
        return new PlaceOnGreen(at.north(), SIZE_METRES - at.north(), side, sideMetres, third, lateral);
    }

    private static RuleResult notChecked(RuleId rule) {
        return new RuleResult(
                rule,
                OptionalDouble.empty(),
                "m",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Outcome.NOT_CHECKED,
                Optional.empty(),
                Message.of("made.notChecked"));
    }
}
