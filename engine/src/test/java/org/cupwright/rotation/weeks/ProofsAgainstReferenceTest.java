package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.shortage.DayByDay;
import org.cupwright.rotation.shortage.DayByDay.Answer;
import org.cupwright.rotation.shortage.PackedDays;
import org.cupwright.rotation.shortage.Packing;
import org.cupwright.rotation.shortage.Shortage;
import org.cupwright.rotation.shortage.Shortage.Cause;
import org.cupwright.rotation.shortage.Shortage.Proof;
import org.cupwright.rotation.solver.CpSat;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Whether a green has ground for its days, as it is proved, against every way to share its spots out among them. */
class ProofsAgainstReferenceTest {
    private static final double REST_METRES = 2.74;
    private static final double ENOUGH_WORK = 10;

    /**
     * A green of few spots, some of which single days rule out; on ground so small that half of such greens fall short.
     */
    private static WeeksRequest made(Random random) {
        int days = 3 + random.nextInt(4);
        int spots = 3 + random.nextInt(5);
        double side = 5 + 5 * random.nextDouble();
        List<Candidate> all = IntStream.range(0, spots)
                .mapToObj(i -> MadeGreens.good(
                        10 + side * random.nextDouble(), 10 + side * random.nextDouble(), DifficultyClass.MEDIUM))
                .toList();
        GreenWeeks green = MadeWeeks.green("1", days, all);
        for (int day = 0; day < days; day++) {
            List<Wishes.Circle> out = all.stream()
                    .filter(spot -> random.nextInt(3) == 0)
                    .map(spot -> new Wishes.Circle(spot.at(), 0.01))
                    .toList();
            if (out.size() < spots) {
                Wishes wishes = new Wishes(Optional.empty(), out, false);
                green = MadeWeeks.with(
                        green, day, new GreenDay(green.days().get(day).ground(), wishes));
            }
        }
        return MadeWeeks.request(days, MadeWeeks.rests(1 + random.nextInt(days), 1), green);
    }

    /** Whether some choice keeps every hole off ground that rests: by trying all, with dates and distances alone. */
    private static boolean fits(WeeksRequest request, List<MapPoint> holes) {
        int day = holes.size();
        if (day == request.days().size()) {
            return true;
        }
        GreenWeeks green = request.greens().get(0);
        for (Candidate spot : green.candidates()) {
            boolean may =
                    green.days().get(day).wishes().forbidden().stream().noneMatch(circle -> circle.holds(spot.at()));
            if (may && isRested(request, holes, spot.at())) {
                List<MapPoint> more = new ArrayList<>(holes);
                more.add(spot.at());
                if (fits(request, more)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isRested(WeeksRequest request, List<MapPoint> holes, MapPoint at) {
        LocalDate today = request.days().get(holes.size());
        for (int before = 0; before < holes.size(); before++) {
            LocalDate until = request.rests().restsUntil(request.days().get(before + 1));
            if (!until.isBefore(today) && holes.get(before).distanceMetres(at) < REST_METRES) {
                return false;
            }
        }
        return true;
    }

    private static Answer asked(WeeksRequest request) {
        WeeksModel model = new WeeksModel(request, Policy.defaults());
        Needs needs = new Needs(model, List.of(0));
        Packing packing = new Packing(needs.spots(), model.restMetres(), Optional.empty(), 0);
        return new DayByDay(needs.need(), packing.groups()).ask(new CpSat(), ENOUGH_WORK);
    }

    @Test
    void whatCannotBeIsProved_andWhatCanIsFound() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("greens with and without ground for their days", 1000, 100);
        int impossible = 0;
        for (int i = 0; i < count; i++) {
            WeeksRequest request = made(random);
            boolean fits = fits(request, List.of());
            Answer answer = asked(request);
            assertThat(answer.settled()).as("case %s", i).isTrue();
            assertThat(answer.fits()).as("case %s", i).isEqualTo(fits);
            assertThat(answer.atLeast() > 0).as("case %s", i).isEqualTo(!fits);
            impossible += fits ? 0 : 1;
        }
        assertThat(impossible).as("without ground").isBetween(count / 5, count * 4 / 5);
    }

    /** The whole plan never leaves open what is so small: what falls short is proved, by counting or by the solver. */
    @Test
    void noPlanOfAGreenWithoutGroundStaysOpen() {
        Random random = new Random(Suite.seed() + 1);
        int count = Suite.count("plans without ground", 200, 30);
        Set<Cause> causes = new TreeSet<>();
        for (int i = 0; i < count; i++) {
            WeeksRequest request = made(random);
            List<Shortage> shortages = new WeeksPlanner(Policy.defaults(), Optional.of(new CpSat()))
                    .plan(request, 20_000, SearchWatch.patient())
                    .shortages();
            if (fits(request, List.of())) {
                assertThat(shortages).as("case %s", i).allMatch(one -> one.atLeast() == 0);
            } else {
                assertThat(shortages).as("case %s", i).hasSize(1).allMatch(one -> one.atLeast() > 0);
                assertThat(shortages.get(0).proof()).as("case %s", i).isIn(Proof.COUNTED, Proof.SOLVED);
                causes.add(shortages.get(0).cause());
            }
        }
        assertThat(causes).contains(Cause.GROUND, Cause.DAYS);
    }

    /** What the quick look finds is there; and it finds most of what is. */
    @Test
    void aPlanOnPackedSpotsIsFoundOnlyWhereThereIsOne() {
        Random random = new Random(Suite.seed() + 2);
        int count = Suite.count("plans on packed spots", 1000, 200);
        int there = 0;
        int found = 0;
        for (int i = 0; i < count; i++) {
            WeeksRequest request = made(random);
            WeeksModel model = new WeeksModel(request, Policy.defaults());
            Needs needs = new Needs(model, List.of(0));
            Packing packing = new Packing(needs.spots(), model.restMetres(), Optional.empty(), 0);
            boolean packed = new PackedDays(needs.need(), packing).found();
            boolean fits = fits(request, List.of());
            assertThat(!packed || fits).as("case %s", i).isTrue();
            there += fits ? 1 : 0;
            found += packed ? 1 : 0;
        }
        assertThat(found).as("of %s", there).isGreaterThan(there * 4 / 5);
    }

    @Test
    void workThatEndsIsTold() {
        WeeksRequest request = made(new Random(Suite.seed()));
        WeeksModel model = new WeeksModel(request, Policy.defaults());
        Needs needs = new Needs(model, List.of(0));
        Packing packing = new Packing(needs.spots(), model.restMetres(), Optional.empty(), 0);
        Answer nothing = new DayByDay(needs.need(), packing.groups())
                .ask((problem, work) -> new ZeroOneAnswer(ZeroOneAnswer.Outcome.OPEN, new BitSet(), 0, 0), 1);
        assertThat(nothing.settled()).isFalse();
    }
}
