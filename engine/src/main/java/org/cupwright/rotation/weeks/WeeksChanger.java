package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.weeks.Repair.Cell;

/**
 * Changes plans of many days as little as what is wanted of them now allows: every hole of a coming day that is
 * elsewhere than it stood has its price, well above small gains and below ground that rests.
 *
 * <p>Greens on which every hole can stay take part with the spots where their holes stand, and no others; only where a
 * day comes out so uneven that moving one more hole would pay, all greens of that day are looked at. It is a plan that
 * no move of one or of two holes betters, not surely the one with the fewest changes there is. Without chance: equal
 * requests have equal answers. Stateless; safe for use by several threads.
 */
public final class WeeksChanger {
    private final Policy policy;

    public WeeksChanger(Policy policy) {
        this.policy = policy;
    }

    /** @param watch may stop it; then the answer says so, and is not worth keeping */
    public ChangedWeeks change(ChangeRequest request, SearchWatch watch) {
        Watched watched = new Watched(watch);
        boolean[] anew = touched(request);
        WeeksModel model = new WeeksModel(request.weeks(), policy, Standing.of(request, anew));
        Choices choices = mended(model, anew, Repair.standing(model), watched);
        if (widened(model, choices, anew)) {
            WeeksModel wider = new WeeksModel(request.weeks(), policy, Standing.of(request, anew));
            choices = mended(wider, anew, carried(model, choices, wider), watched);
            model = wider;
        }
        return told(request, model, choices, watched.stopped);
    }

    /** Asked now and then whether to go on. */
    private static final class Watched implements BooleanSupplier {
        private static final long ROUNDS = 100;

        private final SearchWatch watch;
        private long rounds;
        private boolean stopped;

        Watched(SearchWatch watch) {
            this.watch = watch;
        }

        @Override
        public boolean getAsBoolean() {
            rounds = Math.min(rounds + 1, ROUNDS - 1);
            stopped = stopped || !watch.goOn(rounds, ROUNDS);
            return !stopped;
        }
    }

    private static Choices mended(WeeksModel model, boolean[] anew, Choices from, Watched watched) {
        List<Cell> cells = new ArrayList<>();
        for (int day = 0; day < model.dayCount(); day++) {
            for (int green = 0; green < model.greenCount(); green++) {
                if (anew[green]) {
                    cells.add(new Cell(green, day));
                }
            }
        }
        new Repair(model, from, cells, watched).run();
        return from;
    }

    /** The greens that have a hole which cannot stay, and those that share a green with one. */
    private boolean[] touched(ChangeRequest request) {
        boolean[] touched = new boolean[request.weeks().greens().size()];
        Standing standing = Standing.of(request, touched);
        WeeksModel model = new WeeksModel(request.weeks(), policy, standing);
        Choices choices = Repair.standing(model);
        for (int green = 0; green < touched.length; green++) {
            GreenTable table = model.table(green);
            for (int day = 0; day < model.dayCount(); day = table.stays().end(day)) {
                int stand = model.stay().stand(green, day);
                boolean closed = table.green().days().get(day).wishes().closed();
                boolean stays = closed || table.fixed(day) || table.offers(day, stand);
                boolean conceded =
                        standing.find(green, day).map(Stand::setAside).orElse(false);
                if (!stays
                        || saved(table, day, stand)
                        || outside(table, day, stand)
                        || !conceded && movingMayPay(model, choices, green, day)) {
                    model.sharing(green).forEach(one -> touched[one] = true);
                }
            }
        }
        return touched;
    }

    /** Whether a hole costs more where it is than moving it does: on resting ground, on a plug, by another one. */
    private static boolean movingMayPay(WeeksModel model, Choices choices, int green, int day) {
        return !model.table(green).fixed(day)
                && choices.greenChange(green, day, GreenTable.NONE)
                                + model.stay().price()
                        < 0;
    }

    /** Whether it is outside the day's areas; and perhaps there is ground within. */
    private static boolean outside(GreenTable table, int day, int stand) {
        Wishes wishes = table.green().days().get(day).wishes();
        return stand != GreenTable.NONE
                && !table.fixed(day)
                && !wishes.areas().isEmpty()
                && wishes.areaOf(table.at(stand)).isEmpty();
    }

    /** Whether ground was saved there, and perhaps there is other ground: that shows when all spots are looked at. */
    private boolean saved(GreenTable table, int day, int stand) {
        GreenDay known = table.green().days().get(day);
        return stand != GreenTable.NONE
                && !table.fixed(day)
                && !known.ground().counting(Kind.SAVED).isEmpty()
                && new OnGround(known.ground(), policy)
                        .of(List.of(table.spot(stand)))
                        .get(0)
                        .onSavedGround();
    }

    /** Where a day is so much less even than it was that another hole's move may pay, its greens are taken in too. */
    private static boolean widened(WeeksModel model, Choices choices, boolean[] anew) {
        boolean pays = IntStream.range(0, model.dayCount())
                .anyMatch(day -> choices.balance(day) - balanceBefore(model, day)
                        > model.stay().price());
        boolean any = IntStream.range(0, anew.length).anyMatch(green -> !anew[green]);
        if (pays && any) {
            Arrays.fill(anew, true);
        }
        return pays && any;
    }

    private static long balanceBefore(WeeksModel model, int day) {
        long tally = 0;
        double leave = 0;
        for (int green = 0; green < model.greenCount(); green++) {
            int stand = model.stay().stand(green, day);
            if (stand != GreenTable.NONE) {
                tally += model.table(green).tally(stand);
                leave += model.table(green).leaveOff(stand);
            }
        }
        return model.day(day).cost(tally, leave);
    }

    /** The same choices in a model of the same greens that has more spots. */
    private static Choices carried(WeeksModel model, Choices choices, WeeksModel wider) {
        Choices carried = new Choices(wider);
        for (int green = 0; green < model.greenCount(); green++) {
            for (int day = 0; day < model.dayCount(); day++) {
                int spot = choices.chosen(green, day);
                if (spot != GreenTable.NONE) {
                    carried.put(
                            green,
                            day,
                            wider.table(green).numberOf(model.table(green).at(spot)));
                }
            }
        }
        return carried;
    }

    private ChangedWeeks told(ChangeRequest request, WeeksModel model, Choices choices, boolean stopped) {
        List<Cell> moved = moved(model, choices);
        Causes causes = new Causes(model, choices, moved, policy);
        List<HoleChange> changes =
                moved.stream().map(cell -> change(model, choices, cell, causes)).toList();
        int[] days = moved.stream().mapToInt(Cell::day).distinct().toArray();
        ExplainedDays explained = new ExplainedDays(request.weeks(), model, choices, policy);
        List<DayPlan> plans = Arrays.stream(days)
                .parallel()
                .mapToObj(day -> explained.of(day, green -> moved.contains(new Cell(green, day))))
                .toList();
        return new ChangedWeeks(
                changes,
                plans,
                Evenness.of(model, days, model.stay()::stand),
                Evenness.of(model, days, choices::chosen),
                stopped);
    }

    private static List<Cell> moved(WeeksModel model, Choices choices) {
        List<Cell> moved = new ArrayList<>();
        for (int day = 0; day < model.dayCount(); day++) {
            for (int green = 0; green < model.greenCount(); green++) {
                if (choices.chosen(green, day) != model.stay().stand(green, day)) {
                    moved.add(new Cell(green, day));
                }
            }
        }
        return moved;
    }

    private static HoleChange change(WeeksModel model, Choices choices, Cell cell, Causes causes) {
        GreenTable table = model.table(cell.green());
        return new HoleChange(
                model.calendar().date(cell.day()),
                table.green().hole(),
                table.find(model.stay().stand(cell.green(), cell.day())),
                table.find(choices.chosen(cell.green(), cell.day())),
                causes.of(cell));
    }
}
