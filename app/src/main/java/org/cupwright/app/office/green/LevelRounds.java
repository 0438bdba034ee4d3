package org.cupwright.app.office.green;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.office.work.Searches;
import org.cupwright.app.office.work.Sought;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;

/** Seeks where to lay the level on a green, which takes seconds where it is not remembered. */
@Component
final class LevelRounds {
    /** As many as the command names where it is not told. */
    private static final int SPOTS = 6;

    private final Searches searches;

    LevelRounds(Searches searches) {
        this.searches = searches;
    }

    /** The round of the day, and the green judged beside it, which its page shows. */
    Sought<LevelRoundOfDay.Answer> sought(Visit visit, ShowHole.Answer stands, AskedOfGreen asked) {
        String hole = stands.hole().id();
        String title = visit.texts().say("green.level.work", hole);
        Way way = new Way(
                address("/green/{hole}", visit, hole, asked, true),
                address("/green/{hole}", visit, hole, asked, false));
        return searches.sought(visit, title, way, (session, progress) -> {
            LevelRoundOfDay.Answer answer = new LevelRoundOfDay(session)
                    .of(stands.question(), List.of(hole), LevelRoundOfDay.Aim.PLAN, SPOTS, progress);
            new AssessGreen(session).judged(stands.question(), hole);
            return answer;
        });
    }

    /** As it stands on the page while it is sought. */
    LevelView.Shown waited(
            Visit visit, ShowHole.Answer stands, AskedOfGreen asked, Sought<LevelRoundOfDay.Answer> sought) {
        String hole = stands.hole().id();
        String asks = visit.inCourse(address("/green/{hole}/spot", visit, hole, asked, true) + "&again=true");
        return new LevelView.Shown(Optional.empty(), Optional.of(sought.page(visit.texts())), asks);
    }

    private static String address(String page, Visit visit, String hole, AskedOfGreen asked, boolean level) {
        UriComponentsBuilder address = UriComponentsBuilder.fromPath(page).queryParam("date", visit.date());
        Optional.ofNullable(asked.at()).filter(at -> !at.isBlank()).ifPresent(at -> address.queryParam("at", at));
        if (level) {
            address.queryParam("level", true);
        }
        return address.encode().buildAndExpand(hole).toUriString();
    }
}
