package org.cupwright.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GoodWithin;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.units.Paces;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.json.JsonMapper;

/**
 * The cases that office and phone share: what the office says of them is what stands in their files. That the phone
 * reads the same out of what it carries, the module {@code browser} tries with the same files.
 */
class GroundCasesTest {
    private static final int SOME = 29;

    @TestFactory
    Stream<DynamicTest> theOfficeSaysWhatStandsInTheFile() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(MadeCase.FOLDER)) {
            files = all.sorted().toList();
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(4);
        return files.stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> says(file)));
    }

    private static void says(Path file) {
        MadeCase made = MadeCase.read(file);
        GreenJudge judge = made.judge();
        CarriedGround carried = new CarriedGround(made.green(judge), made.asked(), made.policy());
        assertThat(picture(judge)).isEqualTo(made.judged());
        assertThat(some(judge, made)).isEqualTo(made.said());
        assertThat(JsonMapper.shared().writeValueAsString(carried.document())).isEqualTo(made.carried());
    }

    /** Each spot as it is judged when it is asked about alone. */
    private static List<String> picture(GreenJudge judge) {
        GreenLattice lattice = judge.judgeGreen().lattice();
        List<String> rows = new ArrayList<>();
        for (int row = lattice.rows() - 1; row >= 0; row--) {
            StringBuilder letters = new StringBuilder();
            for (int column = 0; column < lattice.columns(); column++) {
                MapPoint at = lattice.spot(row * lattice.columns() + column);
                boolean off = !judge.judgeGreen().green().hole().green().contains(at);
                letters.append(off ? '.' : letter(judge.judge(at).verdict()));
            }
            rows.add(letters.toString());
        }
        return rows;
    }

    private static char letter(Verdict verdict) {
        return switch (verdict) {
            case PASS -> 'o';
            case CAUTION -> 'c';
            case FAIL -> 'x';
            case NOT_SURVEYED -> '?';
        };
    }

    /** Where some spots are, and how far about them it is as good. */
    private static List<String> some(GreenJudge judge, MadeCase made) {
        GreenLattice lattice = judge.judgeGreen().lattice();
        Optional<GreenFrame> frame =
                GreenFrame.of(judge.judgeGreen().green().hole(), made.policy().get(PlacePolicy.ON_CONVENTION));
        List<String> said = new ArrayList<>();
        for (int cell = 0; cell < lattice.size(); cell += SOME) {
            MapPoint at = lattice.spot(cell);
            if (judge.judgeGreen().findVerdict(cell).isPresent()) {
                said.add(String.format(
                        Locale.ROOT,
                        "%.2f,%.2f %s room %s",
                        at.east(),
                        at.north(),
                        frame.map(known -> where(known.place(at))).orElse("-"),
                        room(judge.judge(at), judge)));
            }
        }
        return said;
    }

    private static String where(PlaceOnGreen place) {
        return String.format(
                        Locale.ROOT,
                        "%s %s on %.1f %s %.1f",
                        place.third(),
                        place.lateral(),
                        Paces.roundedToHalf(place.onMetres(), Paces.STANDARD_METRES),
                        place.side(),
                        Paces.roundedToHalf(place.sideMetres(), Paces.STANDARD_METRES))
                .toLowerCase(Locale.ROOT);
    }

    private static String room(Judgement judged, GreenJudge judge) {
        boolean usable = judged.verdict() == Verdict.PASS || judged.verdict() == Verdict.CAUTION;
        return usable ? String.format(Locale.ROOT, "%.2f", GoodWithin.metres(judged, judge.judgeGreen())) : "-";
    }
}
