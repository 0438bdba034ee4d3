package org.cupwright.app.answers.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.app.answers.FindingText;
import org.cupwright.app.answers.PlaceText;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.findings.GreenFindings;
import org.cupwright.app.desk.intake.ImportResult;
import org.cupwright.app.desk.intake.ImportResult.Points;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.message.Amount;
import org.cupwright.policy.EnumNames;
import org.locationtech.jts.geom.MultiPolygon;
import tools.jackson.databind.JsonNode;

/** What is doubtful about files and ground as scripts read it. */
public record FindingJson(Texts texts) {
    public JsonNode ground(FindDoubts.Answer answer) {
        CourseDay day = answer.day();
        PlaceShapes places = new PlaceShapes(day.course(), day.policy());
        PlaceText words = new PlaceText(texts, day.course(), day.policy());
        return new Shapes(texts)
                .as(
                        GreenFindings.class,
                        green -> new Shape()
                                .with("hole", green.hole().id())
                                .with("restsOn", green.restsOn())
                                .with("readings", green.readings())
                                .with("findings", findings(green, places, words)))
                .tree(new Shape()
                        .with("course", day.course().id())
                        .with("date", day.date())
                        .with("crs", "EPSG:" + day.course().frame().epsg())
                        .with("greens", answer.greens()));
    }

    private static List<Shape> findings(GreenFindings green, PlaceShapes places, PlaceText words) {
        List<Shape> findings = new ArrayList<>();
        String hole = green.hole().id();
        for (GroundFinding found : green.findings()) {
            Optional<MapPoint> place = found.finding().place();
            Optional<Object> where = place.map(at -> words.at(hole, at));
            findings.add(finding(found.finding(), where.orElse(found.finding().where()))
                    .with("number", findings.size() + 1)
                    .with("position", place.map(at -> places.at(hole, at)))
                    .with("areaSquareMetres", found.area().map(MultiPolygon::getArea)));
        }
        return findings;
    }

    private static Shape finding(Finding finding, Object where) {
        Optional<Amount> amount = Amount.of(finding.value());
        return new Shape()
                .with("kind", finding.kind())
                .with("where", where)
                .with("value", finding.value())
                .with("amount", amount.map(Amount::number))
                .with("unit", amount.map(Amount::unit).filter(unit -> !unit.isEmpty()))
                .with("tryThis", finding.tryThis())
                .with("says", finding.says());
    }

    public JsonNode imported(ImportResult result) {
        Shape drawn = new Shape();
        for (Kind kind : Kind.values()) {
            drawn.with(EnumNames.lowerCamel(kind), result.count(kind));
        }
        return new Shapes(texts)
                .as(FileFinding.class, found -> finding(found.finding(), FindingText.where(texts, found)))
                .tree(new Shape()
                        .with("course", result.course().id())
                        .with("crs", "EPSG:" + result.course().frame().epsg())
                        .with("unit", result.unit())
                        .with("points", points(result.points()))
                        .with("holes", result.holes())
                        .with("knownAlready", result.knownAlready())
                        .with("drawn", drawn)
                        .with("findings", result.findings())
                        .with("stored", result.stored()));
    }

    private static Shape points(Points points) {
        return new Shape()
                .with("read", points.read())
                .with("kept", points.kept())
                .with("byClass", new TreeMap<>(points.byClass()));
    }
}
