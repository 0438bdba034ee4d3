package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Lateral;
import org.cupwright.green.PersonsOpinion;
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

/** Invented greens for the rotation's tests: thirty metres deep and wide, front at north 0, left at east 0. */
public final class MadeGreens {
    private static final double SIZE_METRES = 30;

    private MadeGreens() {}

    /** A position judged with a verdict, so far from the edge. */
    public static Judgement judgement(
            double east, double north, Verdict verdict, Optional<DifficultyClass> rank, double edgeMetres) {
        List<RuleResult> rules = new ArrayList<>();
        for (RuleId rule : RuleId.values()) {
            rules.add(rule == RuleId.EDGE ? edge(edgeMetres, verdict) : notChecked(rule));
        }
        Difficulty difficulty =
                new Difficulty(OptionalDouble.empty(), rank, OptionalDouble.empty(), OptionalDouble.empty());
        return new Judgement(
                new MapPoint(east, north), verdict, RestsOn.OUTLINE, rules, Set.of(), difficulty, Optional.empty());
    }

    private static RuleResult edge(double metres, Verdict verdict) {
        Outcome outcome = switch (verdict) {
            case PASS -> Outcome.PASS;
            case CAUTION -> Outcome.CAUTION;
            case FAIL, NOT_SURVEYED -> Outcome.FAIL;
        };
        return new RuleResult(
                RuleId.EDGE,
                OptionalDouble.of(metres),
                "m",
                OptionalDouble.of(3.66),
                OptionalDouble.of(metres - 3.66),
                OptionalDouble.empty(),
                outcome,
                leaning(outcome, metres),
                Message.of("made.edge"));
    }

    /** Every other metre a caution leans to a refusal. */
    private static Optional<Outcome> leaning(Outcome outcome, double metres) {
        boolean doubtful = outcome == Outcome.CAUTION && Math.floor(metres) % 2 == 0;
        return doubtful ? Optional.of(Outcome.FAIL) : Optional.empty();
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
                Message.of("rule." + rule.id() + ".notChecked"));
    }

    public static PlaceOnGreen place(double east, double north) {
        Third third = List.of(Third.values()).get((int) Math.min(2, Math.max(0, north / 10)));
        Lateral lateral = List.of(Lateral.values()).get((int) Math.min(2, Math.max(0, east / 10)));
        Side side = east <= SIZE_METRES / 2 ? Side.LEFT : Side.RIGHT;
        return new PlaceOnGreen(north, SIZE_METRES - north, side, Math.min(east, SIZE_METRES - east), third, lateral);
    }

    /** A good candidate with plenty of room. */
    public static Candidate good(double east, double north, DifficultyClass rank) {
        return candidate(east, north, Verdict.PASS, Optional.of(rank), true, 3);
    }

    public static Candidate candidate(
            double east, double north, Verdict verdict, Optional<DifficultyClass> rank, boolean placed, double room) {
        Optional<PlaceOnGreen> place = placed ? Optional.of(place(east, north)) : Optional.empty();
        return new Candidate(judgement(east, north, verdict, rank, 5), place, room, false);
    }

    /** The same candidate, as one that breaks some rules which are set aside for it. */
    public static Candidate eased(Candidate of, Set<RuleId> rules) {
        Judgement from = of.judgement();
        List<RuleResult> results = from.rules().stream()
                .map(result -> rules.contains(result.rule()) ? broken(result) : result)
                .toList();
        Verdict verdict = rules.contains(RuleId.EDGE) ? Verdict.PASS : from.verdict(); // all else passes here
        Judgement judgement =
                new Judgement(from.position(), verdict, from.restsOn(), results, rules, from.difficulty(), from.word());
        return new Candidate(judgement, of.place(), 0, of.onSavedGround());
    }

    private static RuleResult broken(RuleResult result) {
        return new RuleResult(
                result.rule(),
                result.value(),
                result.unit(),
                result.standardError(),
                result.limit(),
                result.margin(),
                Outcome.FAIL,
                Optional.empty(),
                result.says());
    }

    /** The same candidate, of which a person says something. */
    public static Candidate said(Candidate of, PersonsOpinion.Kind kind) {
        Judgement from = of.judgement();
        PersonsOpinion word =
                new PersonsOpinion(kind, Optional.empty(), Optional.of("Invented Person"), Optional.empty());
        Judgement judgement = new Judgement(
                from.position(),
                from.verdict(),
                from.restsOn(),
                from.rules(),
                from.setAside(),
                from.difficulty(),
                Optional.of(word));
        return new Candidate(judgement, of.place(), of.goodWithinMetres(), of.onSavedGround());
    }

    /** A candidate in the middle of a third, in the centre of the green. */
    public static Candidate in(Third third) {
        return good(15, 5 + 10.0 * third.ordinal(), DifficultyClass.MEDIUM);
    }

    public static GreenCandidates green(String hole, Candidate... candidates) {
        return new GreenCandidates(hole, List.of(candidates), Optional.empty(), Wishes.none());
    }

    /** Greens all over which candidates lie, of mixed verdict, room and difficulty, with a hole of yesterday. */
    static List<GreenCandidates> random(Random random, int greens, int candidates) {
        List<GreenCandidates> made = new ArrayList<>();
        for (int i = 0; i < greens; i++) {
            made.add(random(random, Integer.toString(i + 1), candidates, true));
        }
        return made;
    }

    /**
     * As odd as greens get: some without a line of play, without a hole of yesterday, of unknown difficulty, with one
     * third only, locked, closed, with saved ground.
     */
    static List<GreenCandidates> odd(Random random, int greens, int candidates) {
        List<GreenCandidates> made = new ArrayList<>();
        for (int i = 0; i < greens; i++) {
            String hole = Integer.toString(i + 1);
            boolean placed = random.nextInt(6) > 0;
            GreenCandidates green = random(random, hole, 1 + random.nextInt(candidates), placed);
            made.add(
                    switch (random.nextInt(8)) {
                        case 0 ->
                            new GreenCandidates(
                                    hole,
                                    green.candidates(),
                                    Optional.empty(),
                                    Optional.of(Third.values()[random.nextInt(3)])
                                            .filter(third -> random.nextInt(3) > 0),
                                    Wishes.none());
                        case 1 ->
                            new GreenCandidates(
                                    hole,
                                    green.candidates(),
                                    green.yesterday(),
                                    new Wishes(Optional.of(candidate(random, placed)), List.of(), false));
                        case 2 -> new GreenCandidates(hole, onlyFirstThird(green), green.yesterday(), Wishes.none());
                        case 3 ->
                            random.nextInt(4) > 0
                                    ? green
                                    : new GreenCandidates(
                                            hole, green.candidates(), green.yesterday(), Wishes.greenClosed());
                        default -> green;
                    });
        }
        return made;
    }

    private static GreenCandidates random(Random random, String hole, int candidates, boolean placed) {
        Set<Candidate> made =
                new TreeSet<>((a, b) -> a.at().equals(b.at()) ? 0 : a.at().east() < b.at().east() ? -1 : 1);
        while (made.size() < candidates) {
            made.add(candidate(random, placed));
        }
        MapPoint yesterday = new MapPoint(4 + 22 * random.nextDouble(), 4 + 22 * random.nextDouble());
        return new GreenCandidates(hole, List.copyOf(made), Optional.of(yesterday), Wishes.none());
    }

    private static Candidate candidate(Random random, boolean placed) {
        double east = 4 + 22 * random.nextDouble();
        double north = 4 + 22 * random.nextDouble();
        int dice = random.nextInt(10);
        Verdict verdict = dice < 6 ? Verdict.PASS : dice < 9 ? Verdict.CAUTION : Verdict.FAIL;
        int rank = random.nextInt(7);
        Optional<DifficultyClass> known = rank == 6
                ? Optional.empty()
                : Optional.of(List.of(DifficultyClass.values()).get(rank % 3));
        Candidate unsaid = candidate(east, north, verdict, known, placed, 3 * random.nextDouble());
        PersonsOpinion.Kind[] kinds = {PersonsOpinion.Kind.GOOD, PersonsOpinion.Kind.BAD, PersonsOpinion.Kind.USUAL};
        Candidate made = random.nextInt(2) == 0 ? unsaid : said(unsaid, kinds[random.nextInt(kinds.length)]);
        return random.nextInt(5) > 0
                ? made
                : new Candidate(made.judgement(), made.place(), made.goodWithinMetres(), true);
    }

    private static List<Candidate> onlyFirstThird(GreenCandidates green) {
        Optional<Third> third = green.candidates().get(0).third();
        return green.candidates().stream()
                .filter(candidate -> candidate.third().equals(third))
                .toList();
    }
}
