package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.weeks.Repair.Cell;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Plans that are mended, against every move of one hole and of two, each plan worth what {@link SlowWeeks} says. */
class RepairAgainstReferenceTest {
    private static final double CHANGE = 400;
    private static final double EVEN_DAYS = 20;
    private static final double ROUNDING = 0.05;
    private static final int DAYS = 3;
    private static final int GREENS = 2;

    private record Case(
            WeeksRequest request, Map<String, List<Optional<Stand>>> stands, WeeksModel model, Choices choices) {
        double worth() {
            int moved = 0;
            for (int green = 0; green < GREENS; green++) {
                for (int day = 0; day < DAYS; day++) {
                    moved += isMoved(new Cell(green, day)) && at(green, day).isPresent() ? 1 : 0;
                }
            }
            return Chosen.slow(request, model, choices, EVEN_DAYS).points() + CHANGE * moved;
        }

        private Optional<MapPoint> at(int green, int day) {
            return model.table(green).find(choices.chosen(green, day)).map(spot -> spot.at());
        }

        private Optional<MapPoint> stand(Cell cell) {
            return stands.get(request.greens().get(cell.green()).hole())
                    .get(cell.day())
                    .map(stand -> stand.spot().at());
        }

        /** Elsewhere than it stood; one that stood nowhere has nothing to come back to. */
        boolean isMoved(Cell cell) {
            Optional<MapPoint> stand = stand(cell);
            return stand.isPresent() && !stand.equals(at(cell.green(), cell.day()));
        }

        /** Whether the later of two holes lies where the ground about the earlier rests, by dates and distances. */
        boolean isTooNear(Cell one, Cell other) {
            boolean oneGreen =
                    one.green() == other.green() || !request.sharedGreens().isEmpty();
            int earlier = Math.min(one.day(), other.day());
            int later = Math.max(one.day(), other.day());
            return oneGreen
                    && earlier < later
                    && !request.rests()
                            .restsUntil(request.days().get(earlier + 1))
                            .isBefore(request.days().get(later))
                    && at(one.green(), one.day())
                                    .orElseThrow()
                                    .distanceMetres(
                                            at(other.green(), other.day()).orElseThrow())
                            < 2.74;
        }
    }

    private static Case made(Random random) {
        WeeksRequest request = MadeWeeks.changedDaily(MadeWeeks.odd(random, DAYS, GREENS, 5));
        Map<String, List<Optional<Stand>>> stands = MadeWeeks.anyStands(request, random);
        WeeksModel model = new WeeksModel(
                request, Policy.defaults(), Standing.of(new ChangeRequest(request, stands), new boolean[] {true, true
                }));
        return new Case(request, stands, model, Repair.standing(model));
    }

    /** Of all holes nearly all. */
    private static List<Cell> some(Random random) {
        List<Cell> cells = new ArrayList<>();
        for (int day = 0; day < DAYS; day++) {
            for (int green = 0; green < GREENS; green++) {
                if (random.nextInt(8) > 0) {
                    cells.add(new Cell(green, day));
                }
            }
        }
        return cells;
    }

    @Test
    void holesStandWhereTheyMay_whereSomebodyFixedThem_andNowhereElse() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("holes that stand", 500, 100);
        int fixed = 0;
        for (int i = 0; i < count; i++) {
            Case made = made(random);
            for (int green = 0; green < GREENS; green++) {
                GreenTable table = made.model.table(green);
                for (int day = 0; day < DAYS; day++) {
                    Optional<MapPoint> stand = made.stand(new Cell(green, day));
                    List<MapPoint> offered = Arrays.stream(table.offered(day))
                            .mapToObj(table::at)
                            .toList();
                    Optional<MapPoint> wanted = stand.filter(offered::contains)
                            .or(() -> offered.stream().findFirst().filter(only -> offered.size() == 1));
                    assertThat(made.at(green, day)).as("case %s", i).isEqualTo(wanted);
                    fixed += wanted.isPresent() && !wanted.equals(stand) ? 1 : 0;
                }
            }
        }
        assertThat(fixed).isPositive();
    }

    @Test
    void whenItEndsNoMovePays_norTwoOfHolesThatKeepEachOtherFromTheirGround() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("mended plans", 400, 60);
        int pairs = 0;
        for (int i = 0; i < count; i++) {
            Case made = made(random);
            List<Cell> cells = some(random);
            int[][] before = made.choices.copy();
            new Repair(made.model, made.choices, cells, () -> true).run();
            double worth = made.worth();
            for (int green = 0; green < GREENS; green++) {
                for (int day = 0; day < DAYS; day++) {
                    Cell cell = new Cell(green, day);
                    if (cells.contains(cell)) {
                        assertNoMovePays("case " + i, made, cell, worth);
                        pairs += tried("case " + i, made, cells, cell, worth);
                    } else {
                        assertThat(made.choices.chosen(green, day))
                                .as("case %s", i)
                                .isEqualTo(before[green][day]);
                    }
                }
            }
        }
        assertThat(pairs).as("pairs of moves looked at").isGreaterThan(count);
    }

    private static void assertNoMovePays(String name, Case made, Cell cell, double worth) {
        int[] offered = made.model.table(cell.green()).offered(cell.day());
        int back = made.choices.chosen(cell.green(), cell.day());
        assertThat(back == GreenTable.NONE).as(name).isEqualTo(offered.length == 0);
        for (int spot : offered) {
            made.choices.put(cell.green(), cell.day(), spot);
            assertThat(made.worth()).as(name).isGreaterThan(worth - ROUNDING);
        }
        if (offered.length > 0) {
            made.choices.put(cell.green(), cell.day(), back);
        }
    }

    /** A hole back where it stood, or anywhere if it is in trouble, and one that is in its way there elsewhere. */
    private static int tried(String name, Case made, List<Cell> cells, Cell cell, double worth) {
        int back = made.choices.chosen(cell.green(), cell.day());
        boolean anywhere = back != GreenTable.NONE && isInTrouble(made, cell);
        boolean moved = made.isMoved(cell);
        int tried = 0;
        for (int spot : made.model.table(cell.green()).offered(cell.day())) {
            made.choices.put(cell.green(), cell.day(), spot);
            if (anywhere || moved && !made.isMoved(cell)) {
                for (Cell other : cells) {
                    if (!other.equals(cell) && isInTheWay(made, cell, other)) {
                        assertNoMovePays(name, made, other, worth);
                        tried++;
                    }
                }
            }
            made.choices.put(cell.green(), cell.day(), back);
        }
        return tried;
    }

    /** Whether it costs more where it is, and other holes because of it, than moving it does. */
    private static boolean isInTrouble(Case made, Cell cell) {
        int back = made.choices.chosen(cell.green(), cell.day());
        SlowWeeks with = Chosen.slow(made.request, made.model, made.choices, EVEN_DAYS);
        made.choices.put(cell.green(), cell.day(), GreenTable.NONE);
        SlowWeeks without = Chosen.slow(made.request, made.model, made.choices, EVEN_DAYS);
        double costs = with.holes() - without.holes();
        made.choices.put(cell.green(), cell.day(), back);
        boolean stoodSomewhere = made.stand(cell).isPresent();
        return costs > (stoodSomewhere ? CHANGE : 2 * CHANGE) + ROUNDING;
    }

    private static boolean isInTheWay(Case made, Cell cell, Cell other) {
        if (made.at(other.green(), other.day()).isEmpty()) {
            return false;
        }
        boolean oneGreen =
                cell.green() == other.green() || !made.request.sharedGreens().isEmpty();
        return made.isTooNear(cell, other) || (oneGreen || cell.day() == other.day()) && made.isMoved(other);
    }
}
