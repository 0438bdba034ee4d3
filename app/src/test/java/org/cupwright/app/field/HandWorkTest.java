package org.cupwright.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.desk.paper.CutterKind;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.RimWhited;
import org.cupwright.app.sheets.CourseAnswers;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.Policy;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The hand work as courses do it: one course for each way it can go. */
class HandWorkTest {
    private static final Path FILES = Path.of("src/main/resources/org/cupwright/app/field/files");

    private static Texts texts(String language) {
        return Texts.find(language, Door.PAGES, UnitSystem.METRIC, 1).orElseThrow();
    }

    private static List<String> names(Policy policy) {
        return new HandWork(new CourseAnswers(texts("en"), policy))
                .steps().stream().map(HandWork.Step::name).toList();
    }

    private static ObjectNode carried(String language, Policy policy) {
        ObjectNode day = Json.object();
        new CarriedWork(texts(language), policy).into(day);
        return day;
    }

    private static JsonNode step(ObjectNode day, String name) {
        for (JsonNode step : day.path("work")) {
            if (step.path("name").asString().equals(name)) {
                return step;
            }
        }
        throw new AssertionError("no step " + name + " in " + day);
    }

    @Test
    void aCutterThatIsTurnedTakesThePlugInOnePiece() {
        assertThat(names(Policy.defaults()))
                .containsExactly(
                        "look",
                        "spot",
                        "straight",
                        "halfTurned",
                        "fullTurned",
                        "draw",
                        "old",
                        "wipe",
                        "cup",
                        "rim",
                        "clear",
                        "plug",
                        "roll",
                        "knit",
                        "water",
                        "flag",
                        "brush",
                        "plugs",
                        "marks",
                        "last",
                        "tools");
        assertThat(carried("en", Policy.defaults()).path("way").asString()).isEqualTo("onePiece");
    }

    @Test
    void aCutterThatIsHammeredHasBlowsBeforeTheLook() {
        Policy policy = Policy.defaults().with(PaperPolicy.CUTTER, CutterKind.HAMMERED);
        assertThat(names(policy))
                .containsSubsequence("straight", "hammer", "halfHammered", "fullHammered", "draw", "old")
                .doesNotContain("halfTurned", "fullTurned", "upper", "halves");
        assertThat(carried("en", policy).path("way").asString()).isEqualTo("hammerIn");
    }

    @Test
    void inTwoPiecesTheUpperHalfWaitsInTheBucketAndGoesOnTop() {
        Policy policy = Policy.defaults().with(PaperPolicy.TWO_PIECE, true);
        assertThat(names(policy))
                .containsSubsequence("halfTurned", "upper", "fullTurned", "lower", "old", "clear", "halves", "plug")
                .doesNotContain("draw");
        assertThat(carried("en", policy).path("way").asString()).isEqualTo("twoPiece");
        Policy hammered = policy.with(PaperPolicy.CUTTER, CutterKind.HAMMERED);
        assertThat(names(hammered)).containsSubsequence("hammer", "halfHammered", "upper", "fullHammered", "lower");
    }

    @Test
    void theRimIsWhitedNeverAlwaysOrForEvents() {
        Policy never = Policy.defaults();
        assertThat(names(never)).doesNotContain("white");
        assertThat(step(carried("en", never), "rim").path("answers").get(0).asString())
                .isEqualTo("Do not white the rim.");
        Policy always = never.with(PaperPolicy.WHITE_RIM, RimWhited.ALWAYS);
        assertThat(names(always)).containsSubsequence("cup", "rim", "white", "clear");
        assertThat(step(carried("en", always), "white").path("answers").size()).isZero();
        Policy events = never.with(PaperPolicy.WHITE_RIM, RimWhited.EVENTS);
        assertThat(step(carried("en", events), "white").path("answers").get(0).asString())
                .isEqualTo("White the rim for events only.");
    }

    /** What a course once said with yes or no is still what it says. */
    @Test
    void yesAndNoOfEarlierDaysAreUnderstood() {
        assertThat(PaperPolicy.WHITE_RIM.type().read("yes")).contains(RimWhited.ALWAYS);
        assertThat(PaperPolicy.WHITE_RIM.type().read("no")).contains(RimWhited.NEVER);
        assertThat(PaperPolicy.WHITE_RIM.type().read("events")).contains(RimWhited.EVENTS);
        assertThat(PaperPolicy.WHITE_RIM.type().read("sometimes")).isEmpty();
    }

    @Test
    void whatTheCourseDecidedStandsWhereItIsNeeded() {
        ObjectNode usual = carried("en", Policy.defaults());
        assertThat(step(usual, "look").path("answers").get(0).asString())
                .isEqualTo("Mown first? If not, ask before you cut.");
        assertThat(step(usual, "marks").path("answers").get(0).asString())
                .isEqualTo("Ball marks are mended by: whoever changes the hole.");
        for (String silent : List.of("plug", "plugs", "tools")) {
            assertThat(step(usual, silent).path("answers").size()).isZero();
        }
        Policy own = Policy.defaults()
                .with(PaperPolicy.MOWN_FIRST, false)
                .with(PaperPolicy.BALL_MARKS, "the early crew")
                .with(PaperPolicy.SOIL, "sand from the bay")
                .with(PaperPolicy.NURSERY, "behind the barn")
                .with(PaperPolicy.SHARPENS, "Ash");
        ObjectNode said = carried("en", own);
        assertThat(step(said, "look").path("answers").get(0).asString()).isEqualTo("Cut whether it is mown or not.");
        assertThat(step(said, "marks").path("answers").get(0).asString()).contains("the early crew");
        assertThat(step(said, "plug").path("answers").get(0).asString()).contains("sand from the bay");
        assertThat(step(said, "plugs").path("answers").get(0).asString()).contains("behind the barn");
        assertThat(step(said, "tools").path("answers").get(0).asString()).contains("Ash");
    }

    /** Soil out, soil in, never by force: what to do when it goes wrong. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void whatMayComeInBetweenHasItsAnswer(String language) {
        ObjectNode day = carried(language, Policy.defaults());
        assertThat(step(day, "cup").path("ifs").size()).isEqualTo(1);
        assertThat(step(day, "plug").path("ifs").size()).isEqualTo(2);
        assertThat(step(day, "flag").path("ifs").size()).isEqualTo(2);
        day.path("work")
                .forEach(step -> step.path("ifs").forEach(one -> {
                    assertThat(one.path("when").asString()).endsWith("?");
                    assertThat(one.path("then").asString()).endsWith(".");
                }));
    }

    /** Whatever the course does, each step has a sentence, a drawing, and words for whoever does not see it. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void eachStepIsSaidAndDrawn(String language) throws IOException {
        String drawn = Files.readString(FILES.resolve("hole.svg")) + Files.readString(FILES.resolve("plug.svg"));
        for (Policy policy : policies().toList()) {
            for (JsonNode step : carried(language, policy).path("work")) {
                String drawing = step.path("drawing").asString();
                assertThat(step.path("says").asString())
                        .doesNotStartWith("round.")
                        .endsWith(".");
                assertThat(drawn).containsOnlyOnce("<g id=\"" + drawing + "\"");
                assertThat(texts(language).knows("round.draw." + drawing))
                        .as(drawing)
                        .isTrue();
                assertThat(texts(language).knows("round.drawn." + drawing))
                        .as(drawing)
                        .isTrue();
            }
        }
    }

    private static Stream<Policy> policies() {
        return Stream.of(CutterKind.values())
                .flatMap(cutter -> Stream.of(true, false)
                        .flatMap(two -> Stream.of(RimWhited.values())
                                .map(white -> Policy.defaults()
                                        .with(PaperPolicy.CUTTER, cutter)
                                        .with(PaperPolicy.TWO_PIECE, two)
                                        .with(PaperPolicy.WHITE_RIM, white))));
    }
}
