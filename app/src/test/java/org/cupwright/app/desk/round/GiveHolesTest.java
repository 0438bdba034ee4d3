package org.cupwright.app.desk.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DayRound.Share;
import org.cupwright.app.storage.DayRound.Shares;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.round.StartType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who cuts which holes of an invented course of three, said by several people. */
class GiveHolesTest {
    private static final LocalDate TODAY = MadeVisit.TODAY;

    @TempDir
    private Path path;

    private Path data;

    @BeforeEach
    void open() throws IOException {
        data = MadeVisit.course(path.resolve("data"));
    }

    private Session session(Role role) {
        return MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), role).session();
    }

    private GiveHoles by(String name) {
        return new GiveHoles(session(Role.SUPERINTENDENT).by(name));
    }

    private RoundOfDay on(LocalDate day) {
        return by("Ida").show(Optional.of(day));
    }

    private static RoundWish wish(String... personAndHoles) {
        List<RoundWish.Give> give = new ArrayList<>();
        for (int i = 0; i < personAndHoles.length; i += 2) {
            give.add(new RoundWish.Give(personAndHoles[i], personAndHoles[i + 1]));
        }
        return new RoundWish(Optional.empty(), Optional.empty(), OptionalInt.empty(), give, List.of());
    }

    private static RoundWish start(StartType type, String first, int frost) {
        return new RoundWish(Optional.of(type), Optional.of(first), OptionalInt.of(frost), List.of(), List.of());
    }

    private static Shares shares(String... personAndHoles) {
        List<Share> all = new ArrayList<>();
        for (int i = 0; i < personAndHoles.length; i += 2) {
            all.add(new Share(personAndHoles[i], List.of(personAndHoles[i + 1].split(","))));
        }
        return new Shares(all);
    }

    @Test
    void withoutAWordOnePersonHasThemAll() {
        RoundOfDay round = on(TODAY);
        assertThat(round.tells()).isFalse();
        assertThat(round.says()).isEmpty();
        assertThat(round.nobodys()).isEmpty();
        assertThat(round.parts().get(0).holes()).containsExactly("1", "2", "3");
    }

    @Test
    void aHoleHasOnePersonAndWhoeverHasNoneIsNotNamed() {
        by("Ida").change(Optional.of(TODAY), wish("Ash", "1-2"));
        assertThat(on(TODAY).nobodys()).containsExactly("3");
        RoundOfDay moved = by("Ida").change(Optional.of(TODAY), wish("Noor", "2, 3"));
        assertThat(moved.shares()).isEqualTo(shares("Ash", "1", "Noor", "2,3"));
        assertThat(by("Ida").change(Optional.of(TODAY), wish("Noor", "1")).shares())
                .isEqualTo(shares("Noor", "1,2,3"));
        assertThatThrownBy(() -> by("Ida").change(Optional.of(TODAY), wish("Ash", "1-3", "Noor", "3")))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.what())
                                .isEqualTo(Message.of(
                                        "problem.givenTwice",
                                        new Message.Name("3"),
                                        new Message.Name("Ash"),
                                        new Message.Name("Noor"))));
        assertThat(on(TODAY).shares()).isEqualTo(shares("Noor", "1,2,3"));
    }

    /** Two at once, who name single holes: whichever comes second finds what the first said, and adds to it. */
    @Test
    void whatTwoSayAtOnceOfSingleHolesIsAllKept() throws Exception {
        both(
                () -> by("Ash").change(Optional.of(TODAY), wish("Ash", "1")),
                () -> by("Noor").change(Optional.of(TODAY), wish("Noor", "2-3")));
        assertThat(on(TODAY).shares().who("1")).contains("Ash");
        assertThat(on(TODAY).shares().who("2")).contains("Noor");
        assertThat(on(TODAY).shares().who("3")).contains("Noor");
    }

    /** Two who have the same page before them: one is kept, and the other is told what it is by now, and by whom. */
    @Test
    void ofTwoPagesTheSecondIsTold() throws Exception {
        long seen = on(TODAY).seen();
        List<Object> came = both(
                () -> by("Ash").set(TODAY, seen, wish("Ash", "1-3")),
                () -> by("Noor").set(TODAY, seen, wish("Noor", "1-3")));
        assertThat(came).filteredOn(RoundOfDay.class::isInstance).hasSize(1);
        String kept = on(TODAY).shares().all().get(0).person();
        assertThat(came)
                .filteredOn(Problem.class::isInstance)
                .singleElement()
                .satisfies(told -> assertThat(((Problem) told).what().toString())
                        .contains("problem.roundChanged", "text=" + kept, "text=1–3"));
    }

    @Test
    void aPageIsToldWhatACommandSaidMeanwhile() {
        long seen = on(TODAY).seen();
        InProcess.Result typed = new InProcess(data).run("round", "--give", "1=Ash", "--person", "Robin");
        assertThat(typed.status()).as(typed.err()).isZero();
        assertThatThrownBy(() -> by("Noor").set(TODAY, seen, wish("Noor", "1-3")))
                .isInstanceOfSatisfying(
                        Problem.class,
                        told -> assertThat(told.what().toString())
                                .contains("text=Robin", "roundOf.share", "text=Ash", "roundOf.nobody", "text=2, 3"));
        assertThat(on(TODAY).shares()).isEqualTo(shares("Ash", "1"));
        RoundOfDay now = by("Noor").set(TODAY, on(TODAY).seen(), wish("Noor", "1-3"));
        assertThat(now.shares()).isEqualTo(shares("Noor", "1,2,3"));
    }

    @Test
    void aNewDayIsAsTheLastThatBeganSo() {
        LocalDate later = TODAY.plusDays(3);
        by("Ida").change(Optional.of(TODAY.minusDays(1)), wish("Ash", "1-2", "Noor", "3"));
        by("Ida").change(Optional.of(TODAY), start(StartType.SHOTGUN, "09:00", 0));
        by("Ida").change(Optional.of(TODAY), wish("Kim", "1-3"));
        assertThat(on(later).shares()).isEqualTo(shares("Ash", "1,2", "Noor", "3"));
        RoundOfDay shotgun = by("Ida").change(Optional.of(later), start(StartType.SHOTGUN, "09:00", 0));
        assertThat(shotgun.shares()).isEqualTo(shares("Kim", "1,2,3"));
        assertThat(shotgun.cutBy("3")).contains(LocalTime.of(8, 50));
        assertThat(by("Ida").asUsual(Optional.of(later)).shares()).isEqualTo(shares("Ash", "1,2", "Noor", "3"));
        assertThat(on(TODAY.minusDays(2)).shares())
                .as("days before know nothing")
                .isEqualTo(Shares.NONE);
    }

    @Test
    void frostShiftsTheDayAlone() {
        RoundOfDay frost = by("Ida").change(Optional.of(TODAY), start(StartType.TWO_TEES, "7:30", 45));
        assertThat(frost.cutBy("1")).contains(LocalTime.of(8, 5));
        assertThat(frost.parts().get(0).holes()).containsExactly("1", "3", "2");
        assertThat(on(TODAY.plusDays(1)).tells()).isFalse();
        for (RoundWish wrong : List.of(
                start(StartType.SHOTGUN, "25:00", 0),
                start(StartType.SHOTGUN, "soon", 0),
                start(StartType.SHOTGUN, "09:00", 481))) {
            assertThatThrownBy(() -> by("Ida").change(Optional.of(TODAY), wrong))
                    .isInstanceOf(Problem.class);
        }
        assertThat(on(TODAY).start()).isEqualTo(frost.start());
    }

    @Test
    void namesAreThoseOfPeople() {
        for (String name : List.of("", "  ", "\u202Eevil", "x".repeat(61), "…")) {
            assertThatThrownBy(() -> by("Ida").change(Optional.of(TODAY), wish(name, "1")))
                    .as(name)
                    .isInstanceOf(Problem.class);
        }
        assertThat(on(TODAY).said()).isEmpty();
    }

    @Test
    void whoeverMayNotPlanMayNotSayIt() {
        for (Role role : List.of(Role.CHANGER, Role.READER)) {
            GiveHoles give = new GiveHoles(session(role));
            assertThatThrownBy(() -> give.change(Optional.of(TODAY), wish("Ash", "1")))
                    .isInstanceOf(Problem.class);
            assertThat(give.show(Optional.of(TODAY)).tells()).isFalse();
        }
        assertThat(new GiveHoles(session(Role.OFFICIAL))
                        .change(Optional.of(TODAY), wish("Ash", "1"))
                        .isShared())
                .isTrue();
    }

    private static List<Object> both(Callable<?> one, Callable<?> other) throws Exception {
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Object> came = new ArrayList<>();
            for (Future<Object> each : two.invokeAll(List.of(caught(one), caught(other)))) {
                came.add(each.get());
            }
            return came;
        } finally {
            two.shutdownNow();
        }
    }

    private static Callable<Object> caught(Callable<?> work) {
        return () -> {
            try {
                return work.call();
            } catch (Problem told) {
                return told;
            }
        };
    }
}
