package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.exact.ZeroOneSolver;
import org.cupwright.rotation.exact.ZeroOneSolver.SolverMissing;
import org.cupwright.rotation.shortage.DayByDay;
import org.cupwright.rotation.shortage.DayByDay.Answer;
import org.cupwright.rotation.shortage.GroundNeed;
import org.cupwright.rotation.shortage.GroundNeed.Stage;
import org.cupwright.rotation.shortage.GroundNeed.Window;
import org.cupwright.rotation.shortage.PackedDays;
import org.cupwright.rotation.shortage.Packing;
import org.cupwright.rotation.shortage.RestedRoom;
import org.cupwright.rotation.shortage.Shortage;
import org.cupwright.rotation.shortage.Shortage.Cause;
import org.cupwright.rotation.shortage.Shortage.Proof;
import org.cupwright.rotation.shortage.Shortage.Step;

/** Why a plan has holes on resting ground: green by green the cause, how it is known, and what would help. */
final class WhyShort {
    /** For each question, in the solver's unit: our choice, so that a cause is named within seconds. */
    private static final double SOLVERS_WORK = 1;

    /** For a green as a whole, in the same unit: our choice. */
    private static final double WHOLE_WORK = 2;

    /** More greens than this that stay open at once have the work of so many between them: our choice. */
    private static final double WORK_OF_GREENS = 2;

    private final WeeksRequest request;
    private final WeeksModel model;
    private final Policy policy;
    private final Optional<ZeroOneSolver> solver;

    WhyShort(WeeksRequest request, WeeksModel model, Policy policy, Optional<ZeroOneSolver> solver) {
        this.request = request;
        this.model = model;
        this.policy = policy;
        this.solver = solver;
    }

    /** The greens of a plan that have holes on resting ground, in round order. */
    List<Shortage> of(Choices found) {
        RestingHoles resting = new RestingHoles(model);
        List<List<Integer>> shortOnes = IntStream.range(0, model.greenCount())
                .mapToObj(model::sharing)
                .filter(WhyShort::standsFirst)
                .filter(greens -> resting.count(found, greens) > 0)
                .toList();
        List<Optional<Shortage>> shown = shortOnes.parallelStream()
                .map(greens -> new OfGreen(greens, resting.count(found, greens), Optional.empty(), 0).shown())
                .toList();
        double share = Math.min(
                1, WORK_OF_GREENS / shown.stream().filter(Optional::isEmpty).count());
        return IntStream.range(0, shown.size())
                .parallel()
                .mapToObj(number -> shown.get(number).orElseGet(() -> asked(found, shortOnes.get(number), share)))
                .toList();
    }

    private Shortage asked(Choices found, List<Integer> greens, double share) {
        return new OfGreen(greens, new RestingHoles(model).count(found, greens), solver, share).shortage();
    }

    /** Of holes that share a green the first stands for all. */
    private static boolean standsFirst(List<Integer> greens) {
        return greens.stream().allMatch(green -> green >= greens.get(0));
    }

    /** One green of the plan, with all the holes that are played to it. */
    private final class OfGreen {
        private final List<Integer> greens;
        private final int planned;
        private final GroundNeed need;
        private final RestedRoom room;
        private final Easings easings;
        private final Packing packing;
        private final Optional<ZeroOneSolver> solver;
        private final double share;

        /** @param share of the solver's work that this green has */
        OfGreen(List<Integer> greens, int planned, Optional<ZeroOneSolver> solver, double share) {
            this.solver = solver;
            this.share = share;
            // Two holes of one day on one green count as too near only if the course says so anyway.
            this.greens = model.keepsSharedApart() ? greens : greens.subList(0, 1);
            this.planned = planned;
            Needs needs = new Needs(model, this.greens);
            this.need = needs.need();
            this.packing = new Packing(needs.spots(), model.restMetres(), solver, SOLVERS_WORK * share);
            this.room = new RestedRoom(need, packing);
            this.easings = new Easings(request, greens, policy);
        }

        /** The green has ground for all its days, shown by a plan: that is quickly looked for, and settles most. */
        Optional<Shortage> shown() {
            return new PackedDays(need, packing).found()
                    ? Optional.of(shortage(Cause.TOGETHER, room.widest(), 0, Proof.SHOWN, List.of()))
                    : Optional.empty();
        }

        Shortage shortage() {
            List<Window> windows = room.windows();
            if (!windows.isEmpty()) {
                return tooLittle(windows);
            }
            Window widest = room.widest();
            if (easings.alone() == 0) {
                return shortage(Cause.TOGETHER, widest, 0, Proof.SHOWN, List.of());
            }
            return askedWhole(widest, easings.steps(longestRest(widest)));
        }

        /** What neither counting nor a plan settles is put to the solver as a whole; what it leaves open is told so. */
        private Shortage askedWhole(Window widest, List<Step> steps) {
            if (solver.isEmpty()) {
                return shortage(Cause.OPEN, widest, 0, Proof.NO_SOLVER, steps);
            }
            try {
                Answer answer = new DayByDay(need, packing.groups()).ask(solver.get(), WHOLE_WORK * share);
                if (answer.atLeast() > 0) {
                    int stages = need.stages().size();
                    Window all = new Window(0, stages - 1, stages - answer.atLeast(), true);
                    return shortage(Cause.DAYS, all, answer.atLeast(), Proof.SOLVED, steps);
                }
                return answer.fits()
                        ? shortage(Cause.TOGETHER, widest, 0, Proof.SHOWN, List.of())
                        : shortage(Cause.OPEN, widest, 0, Proof.WORK_ENDED, steps);
            } catch (SolverMissing missing) {
                return shortage(Cause.OPEN, widest, 0, Proof.NO_SOLVER, steps);
            }
        }

        private Shortage tooLittle(List<Window> windows) {
            Window worst = windows.stream()
                    .max(Comparator.comparingInt(Window::tooMany))
                    .orElseThrow();
            return shortage(
                    windows.stream().anyMatch(this::isFixed) ? Cause.FIXED : Cause.GROUND,
                    windows.stream().filter(this::isFixed).findFirst().orElse(worst),
                    windows.stream().mapToInt(Window::tooMany).sum(),
                    windows.stream().anyMatch(Window::solved) ? Proof.SOLVED : Proof.COUNTED,
                    easings.steps(longestRest(worst)));
        }

        private Shortage shortage(Cause cause, Window window, int atLeast, Proof proof, List<Step> steps) {
            return new Shortage(
                    cause,
                    greens.stream()
                            .map(green -> model.table(green).green().hole())
                            .toList(),
                    date(window.from()),
                    date(window.to()),
                    window.wanted(),
                    window.room(),
                    room.fit(window),
                    longestRest(window),
                    planned,
                    atLeast,
                    proof,
                    steps.stream()
                            .filter(step -> step.holesSetAside() < planned)
                            .toList());
        }

        /** A window of one hole that was fixed: what it lies near is fixed too, or was there before. */
        private boolean isFixed(Window window) {
            Stage stage = need.stages().get(window.from());
            return window.wanted() == 1
                    && greens.stream()
                            .map(model::table)
                            .anyMatch(table -> table.green().hole().equals(stage.hole()) && table.fixed(stage.day()));
        }

        private LocalDate date(int stage) {
            return model.calendar().date(need.stages().get(stage).day());
        }

        private LocalDate leftOn(Stage stage) {
            return greens.stream()
                    .map(model::table)
                    .filter(table -> table.green().hole().equals(stage.hole()))
                    .map(table -> table.stays().leftOn(stage.day()))
                    .findFirst()
                    .orElseThrow();
        }

        /** The longest rest of a hole of some days, the day on which it was left included. */
        private long longestRest(Window window) {
            return need.stages().subList(window.from(), window.to() + 1).stream()
                    .map(this::leftOn)
                    .mapToLong(left ->
                            ChronoUnit.DAYS.between(left, request.rests().restsUntil(left)) + 1)
                    .max()
                    .orElse(0);
        }
    }
}
