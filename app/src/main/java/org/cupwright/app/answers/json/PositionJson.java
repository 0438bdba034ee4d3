package org.cupwright.app.answers.json;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Side;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Positions, rules and difficulty as scripts read them. */
public final class PositionJson {
    private final Texts texts;
    private final double paceMetres;

    public PositionJson(Texts texts, double paceMetres) {
        this.texts = texts;
        this.paceMetres = paceMetres;
    }

    public ObjectNode position(JudgedPosition position) {
        ObjectNode node = position(position.place(), position.judgement().position());
        node.set("goodWithinPaces", goodWithin(position.goodWithinMetres()));
        return node;
    }

    /** A place of which nothing was asked but where it is. */
    public ObjectNode position(Optional<PlaceOnGreen> place, MapPoint at) {
        ObjectNode node = Json.object();
        node.set("east", Json.number(at.east()));
        node.set("north", Json.number(at.north()));
        node.set("onPaces", halves(place.map(PlaceOnGreen::onMetres)));
        node.set("side", Json.text(place.map(found -> found.side() == Side.LEFT ? "L" : "R")));
        node.set("sidePaces", halves(place.map(PlaceOnGreen::sideMetres)));
        node.set("third", Json.text(place.map(found -> EnumNames.lowerCamel(found.third()))));
        node.set("lateral", Json.text(place.map(found -> EnumNames.lowerCamel(found.lateral()))));
        return node;
    }

    /** Half paces, rounded down: a promise is not rounded up. */
    private JsonNode goodWithin(OptionalDouble metres) {
        return metres.isPresent()
                ? Json.number(Math.floor(2 * Paces.fromMetres(metres.getAsDouble(), paceMetres) + 1e-9) / 2)
                : Json.number(Double.NaN);
    }

    private JsonNode halves(Optional<Double> metres) {
        return Json.number(
                metres.map(length -> Paces.roundedToHalf(length, paceMetres)).orElse(Double.NaN));
    }

    public ArrayNode rules(Judgement judgement) {
        return Json.array(judgement.rules().stream().map(this::rule).toList());
    }

    private ObjectNode rule(RuleResult result) {
        ObjectNode node = Json.object();
        node.put("rule", result.rule().id());
        node.set("value", Json.number(result.value()));
        node.put("unit", result.unit());
        node.set("limit", Json.number(result.limit()));
        node.set("margin", Json.number(result.margin()));
        node.set("standardError", Json.number(result.standardError()));
        node.put("outcome", EnumNames.lowerCamel(result.outcome()));
        result.leans().ifPresent(leaning -> node.put("leans", EnumNames.lowerCamel(leaning)));
        node.put("says", texts.say(result.says()));
        return node;
    }

    public ObjectNode difficulty(Difficulty difficulty) {
        ObjectNode node = Json.object();
        node.set("expectedPutts", Json.number(difficulty.expectedPutts()));
        node.set("class", Json.text(difficulty.rank().map(EnumNames::lowerCamel)));
        node.set("meanLeaveMetres", Json.number(difficulty.meanLeaveMetres()));
        node.set("worstLeaveMetres", Json.number(difficulty.worstLeaveMetres()));
        return node;
    }

    public String verdict(Judgement judgement) {
        return EnumNames.lowerCamel(judgement.verdict());
    }

    /** What people say of a position; null where they say nothing. */
    public JsonNode word(Judgement judgement) {
        return judgement.word().<JsonNode>map(PositionJson::word).orElseGet(Json::nothing);
    }

    public static ObjectNode word(PersonsOpinion word) {
        ObjectNode node = Json.object();
        node.put("kind", EnumNames.lowerCamel(word.kind()));
        node.set("reason", Json.text(word.reason()));
        node.set("person", Json.text(word.person()));
        node.set("date", Json.text(word.date().map(LocalDate::toString)));
        return node;
    }

    public String restsOn(Judgement judgement) {
        return EnumNames.lowerCamel(judgement.restsOn());
    }

    public ArrayNode setAside(Judgement judgement) {
        return Json.texts(judgement.setAside().stream().map(rule -> rule.id()).toList());
    }

    /** A position with its verdict, as a list of them has it. */
    public ObjectNode judged(JudgedPosition position) {
        ObjectNode node = position(position);
        node.put("verdict", verdict(position.judgement()));
        node.put("restsOn", restsOn(position.judgement()));
        node.set("word", word(position.judgement()));
        node.set("difficulty", difficulty(position.judgement().difficulty()));
        return node;
    }
}
