package org.cupwright.app.desk.first;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.state.MarkedGround;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckList;
import org.cupwright.turf.today.TurfDay;

/** What the logbook says has to be known at one green: a temporary green, closed ground, plugs that are not level. */
public record GreenNotices(TurfDay turf) {
    /** The notices at a hole, the gravest first. */
    public List<Notice> at(String hole) {
        List<Notice> notices = new ArrayList<>();
        if (turf.state().green(hole).temporaryGreen()) {
            notices.add(Notice.at(hole, Notice.Kind.TEMPORARY, Message.of("first.temporary")));
        }
        turf.state().green(hole).marked().stream()
                .filter(ground -> ground.use() == GroundUse.CLOSED && ground.countsOn(turf.day()))
                .map(ground -> closed(hole, ground))
                .forEach(notices::add);
        new RecheckList(turf)
                .list(List.of(hole)).stream()
                        .filter(item -> item.reason().isFault())
                        .map(GreenNotices::plug)
                        .forEach(notices::add);
        return notices;
    }

    private static Notice closed(String hole, MarkedGround ground) {
        Translated reason = new Translated("log.choice.reason." + EnumNames.lowerCamel(ground.reason()));
        Message says = ground.until()
                .map(until -> Message.of("first.closed.until", reason, new Day(until)))
                .orElseGet(() -> Message.of("first.closed", reason));
        return new Notice(
                Notice.Kind.CLOSED,
                Optional.of(hole),
                says,
                Optional.of(MapPoint.of(ground.place().getInteriorPoint().getCoordinate())));
    }

    private static Notice plug(RecheckItem item) {
        return new Notice(
                Notice.Kind.PLUG,
                Optional.of(item.hole()),
                Message.of("first.plug." + EnumNames.lowerCamel(item.reason())),
                Optional.of(item.plug().at()));
    }
}
