package org.cupwright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.message.Problem;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What holds of every use case that writes: its right, and that it decides on what is there when it writes. */
class WritingUseCasesIT {
    private static final List<WritingUseCase> ALL = WritingUseCase.all();
    private static final int PAIRS_OF_WHICH_ONE = 8;

    @TempDir
    private Path path;

    private final Map<List<Integer>, String> told = new HashMap<>();
    private int folders;

    @BeforeEach
    void aDesk() {
        MadeDesk.make(path.resolve("made"));
    }

    private SqliteFolder copy() throws IOException {
        Path copy = Files.createDirectory(path.resolve("copy" + folders++));
        Files.copy(path.resolve("made/cupwright.db"), copy.resolve("cupwright.db"));
        return new SqliteFolder(copy, MadeDesk.CLOCK);
    }

    /** Does it; answers why it was refused, if it was. */
    private static Optional<String> done(WritingUseCase useCase, DataFolder folder, boolean again) {
        try {
            useCase.work()
                    .accept(MadeDesk.asking(folder, useCase.name() + (again ? " again" : ""), Role.SUPERINTENDENT));
            return Optional.empty();
        } catch (Problem refused) {
            return Optional.of(refused.what().key());
        }
    }

    /** What is kept after some of them, one after the other, by their places in {@link #ALL}. */
    private String after(Integer... useCases) throws IOException {
        String known = told.get(List.of(useCases));
        if (known == null) {
            try (SqliteFolder folder = copy()) {
                for (int i = 0; i < useCases.length; i++) {
                    done(ALL.get(useCases[i]), folder, i == 1 && useCases[0].equals(useCases[1]));
                }
                known = MadeDesk.told(folder);
                told.put(List.of(useCases), known);
            }
        }
        return known;
    }

    @Test
    void eachIsRefusedToWhoeverHasNoRightToIt() throws IOException {
        try (SqliteFolder folder = copy()) {
            String before = MadeDesk.told(folder);
            for (WritingUseCase useCase : ALL) {
                assertThatThrownBy(() -> useCase.work().accept(MadeDesk.asking(folder, "Rea", Role.READER)))
                        .as(useCase.name())
                        .isInstanceOf(Problem.class)
                        .hasMessageContaining("problem.notAllowed");
            }
            assertThat(MadeDesk.told(folder)).isEqualTo(before);
        }
    }

    @Test
    void everyRightIsAskedFor() {
        assertThat(ALL).extracting(WritingUseCase::right).contains(Right.RECORD, Right.PLAN, Right.SET, Right.SURVEY);
    }

    @Test
    void eachChangesSomethingByItself() throws IOException {
        String before = after();
        Set<String> nothingToDo = Set.of("withdraw plan", "change taken back", "same level reading", "map", "demo");
        for (int i = 0; i < ALL.size(); i++) {
            if (!nothingToDo.contains(ALL.get(i).name())) {
                assertThat(after(i)).as(ALL.get(i).name()).isNotEqualTo(before);
            }
        }
    }

    /**
     * One of them does all it does between another's reading and writing: as if they had come one after the other. A
     * full check takes every pair, a plain one an eighth of them, another with each seed.
     */
    @Test
    void twoAtOnceComeToWhatOneAfterTheOtherComesTo() throws IOException {
        Map<String, String> wrong = new HashMap<>();
        for (int first = 0; first < ALL.size(); first++) {
            for (int second = 0; second < ALL.size(); second++) {
                boolean turn = Suite.full() || Math.floorMod(first + second + Suite.seed(), PAIRS_OF_WHICH_ONE) == 0;
                if (turn && (!slow(first) && !slow(second) || first == second)) {
                    String pair =
                            ALL.get(first).name() + " | " + ALL.get(second).name();
                    wrong(first, second).ifPresent(what -> wrong.put(pair, what));
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** Making the invented course takes seconds; it writes to a course of its own, which none of the others touches. */
    private static boolean slow(int useCase) {
        return ALL.get(useCase).name().equals("demo");
    }

    /** {@code first} is being done when {@code second} comes in between. */
    private Optional<String> wrong(int first, int second) throws IOException {
        try (SqliteFolder folder = copy()) {
            List<String> refused = new ArrayList<>();
            DataFolder between = new BetweenReadAndWrite(
                    folder, () -> done(ALL.get(second), folder, false).ifPresent(refused::add));
            Optional<String> why = done(ALL.get(first), between, first == second);
            String together = MadeDesk.told(folder);
            boolean inTurn = together.equals(after(second, first))
                    || (refused.isEmpty() && together.equals(after(first, second)));
            boolean toldSo = why.equals(Optional.of("problem.changedMeanwhile")) && together.equals(after(second));
            return inTurn || toldSo ? Optional.empty() : Optional.of(why + "\n" + together);
        }
    }
}
