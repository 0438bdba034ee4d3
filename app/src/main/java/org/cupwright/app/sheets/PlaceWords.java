package org.cupwright.app.sheets;

import java.util.Optional;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.green.End;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Side;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.EnumNames;
import org.cupwright.settingout.FromMark;
import org.cupwright.settingout.Leeway;
import org.cupwright.settingout.PacedPlace;

/** Where a hole is, as it is read on paper: the words, then paces on and from the side. */
public final class PlaceWords {
    private final Texts texts;
    private final PositionText positions;

    public PlaceWords(Texts texts, double paceMetres) {
        this.texts = texts;
        this.positions = new PositionText(texts, paceMetres);
    }

    /** Where a hole is or is to be: {@code back left}; or that the plan leaves the green out. */
    public String where(SheetHole hole) {
        if (hole.temporary()) {
            return texts.say("sheet.temporary");
        }
        return hole.cut()
                .map(SheetHole.Cut::directions)
                .map(way -> area(way.place().map(PacedPlace::metres), way.at()))
                .orElseGet(() -> texts.say("sheet.noHole"));
    }

    /** {@code back left}; on a green without a line of play the coordinates, as they are all there is. */
    String area(Optional<PlaceOnGreen> place, MapPoint at) {
        return positions.area(place, at);
    }

    String area(PlaceOnGreen place) {
        return positions.area(place);
    }

    String part(CutSomewhere part) {
        return positions.part(part);
    }

    /** {@code 22 on · 5 from left}. */
    public String paces(PlaceOnGreen place) {
        return on(place) + " · " + side(place);
    }

    public String on(PlaceOnGreen place) {
        return texts.say("sheet.on", positions.halves(place.onMetres()));
    }

    public String side(PlaceOnGreen place) {
        String key = place.side() == Side.LEFT ? "sheet.fromLeft" : "sheet.fromRight";
        return texts.say(key, positions.halves(place.sideMetres()));
    }

    /** {@code 4½ from the back}, where the back is nearer. */
    public Optional<String> fromBack(PacedPlace place) {
        return place.nearerEnd() == End.BACK
                ? Optional.of(texts.say("sheet.fromBack", texts.halves(place.fromBackPaces())))
                : Optional.empty();
    }

    String whole(PlaceOnGreen place) {
        return area(place) + " · " + paces(place);
    }

    /** Where a hole was cut: {@code 22 on · 5 from left}; a practice green's may not be known. */
    public String cut(SheetHole hole) {
        if (hole.cut().isEmpty()) {
            return texts.say("sheet.card.unknown");
        }
        return hole.paced().map(place -> paces(place.metres())).orElseGet(() -> where(hole));
    }

    /** Where the hole was before: {@code 22 on · 5 from left}, or what is known of it. */
    public String lastHole(SheetHole hole) {
        return hole.lastHole()
                .map(this::paces)
                .or(() -> hole.roughHole().map(this::part))
                .orElseGet(() -> texts.say("sheet.card.unknown"));
    }

    /** How far off is still as good; where that is nowhere, on which side there is more room. */
    public String within(Leeway leeway, Verdict verdict) {
        String within = JudgementText.within(leeway.goodWithinPaces(), verdict, texts);
        return leeway.moreRoom()
                .filter(way -> leeway.goodWithinPaces() < 0.5)
                .map(way -> within + ", " + texts.say("sheet.moreRoom." + EnumNames.lowerCamel(way)))
                .orElse(within);
    }

    /** {@code 12½ paces from head 7-3 towards head 7-1}. */
    public String fromMark(FromMark way) {
        String paces = texts.paces(way.paces());
        return way.towards()
                .map(towards ->
                        texts.say("sheet.fromMarkTowards", paces, way.mark().name(), towards.name()))
                .orElseGet(() -> texts.say("sheet.fromMark", paces, way.mark().name()));
    }
}
