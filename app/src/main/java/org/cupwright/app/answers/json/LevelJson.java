package org.cupwright.app.answers.json;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.level.KeepLevelReading;
import org.cupwright.app.desk.level.KeepLevelReading.TakenBack;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.desk.level.LevelRoundOfDay.GreenRound;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.green.LevelReading;
import org.cupwright.green.ReadingId;
import org.cupwright.green.agreement.RoundBought;
import org.cupwright.holelocation.levelround.LevelRound;
import org.cupwright.holelocation.levelround.RoundSpot;
import tools.jackson.databind.JsonNode;

/** Level readings, and rounds to take them, as scripts read them. */
public final class LevelJson {
    private final CourseDay day;
    private final PlaceShapes places;
    private final Shapes shapes;

    public LevelJson(CourseDay day, Texts texts) {
        this.day = day;
        this.places = new PlaceShapes(day.course(), day.policy());
        this.shapes = new Shapes(texts).as(GreenRound.class, LevelJson::green).as(RoundSpot.class, this::spot);
    }

    public JsonNode kept(KeepLevelReading.Kept kept) {
        return shapes.tree(reading(kept.hole(), kept.reading())
                .with("replaced", kept.replaced().map(LevelReading::plane))
                .with("before", kept.before())
                .with("now", kept.now())
                .with("bought", kept.bought().map(LevelJson::bought)));
    }

    public JsonNode takenBack(TakenBack taken) {
        return shapes.tree(reading(taken.hole(), taken.reading()));
    }

    public JsonNode list(KeepLevelReading.Listed list) {
        List<Shape> readings = new ArrayList<>();
        for (KeepLevelReading.OfGreen green : list.greens()) {
            for (int i = 0; i < green.readings().size(); i++) {
                readings.add(reading(green.hole(), green.readings().get(i))
                        .with("number", i + 1)
                        .with("without", green.without().get(i)));
            }
        }
        List<Shape> bought = list.greens().stream()
                .flatMap(green -> green.bought().stream()
                        .map(round ->
                                new Shape().with("hole", green.hole().id()).with(bought(round))))
                .toList();
        return shapes.tree(new Shape()
                .with("course", day.course().id())
                .with("readings", readings)
                .with("bought", bought));
    }

    private static Shape bought(RoundBought bought) {
        return new Shape()
                .with("readings", bought.readings())
                .with("withoutPoints", bought.withoutPoints())
                .with("withPoints", bought.withPoints())
                .with("shared", SlopeErrorShape.sharing(bought.sharing()));
    }

    private Shape reading(Hole hole, LevelReading reading) {
        return new Shape()
                .with("course", day.course().id())
                .with("hole", hole.id())
                .with("id", ReadingId.of(hole.id(), reading))
                .with("position", places.at(hole.id(), reading.place()))
                .with("reading", reading.plane())
                .with("person", reading.person())
                .with("readOn", reading.readOn());
    }

    public JsonNode round(LevelRoundOfDay.Answer answer) {
        return shapes.tree(new Shape()
                .with("course", day.course().id())
                .with("date", day.date())
                .with("speedFeet", day.fastest().feet())
                .with("aim", answer.aim())
                .with("greens", answer.greens()));
    }

    private static Shape green(GreenRound green) {
        LevelRound round = green.round();
        return new Shape()
                .with("hole", green.hole().id())
                .with("restsOn", green.restsOn())
                .with("readings", green.readings())
                .with("undecidedSquareMetres", round.undecidedSquareMetres())
                .with("expectedSquareMetres", round.expectedSquareMetres())
                .with("expectedShare", round.expectedShare())
                .with("spots", round.spots());
    }

    private Shape spot(RoundSpot spot) {
        return new Shape()
                .with("position", places.at(spot.place(), spot.at()))
                .with("forThird", spot.candidateOf())
                .with("expectedSquareMetres", spot.expectedSquareMetres());
    }
}
