package org.cupwright.app.office.course;

import java.util.Optional;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.findings.GreenFindings;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.session.Session;
import org.cupwright.app.texts.Texts;

/** Draws what is doubtful about a green where it is: each place under the number it has in the list. */
record DoubtsMap(Session session, DayQuestion question, Texts texts) {
    /** The picture; empty where nothing is doubtful. */
    Optional<String> of(GreenFindings green) {
        return green.findings().isEmpty() ? Optional.empty() : Optional.of(drawn(green));
    }

    private String drawn(GreenFindings green) {
        GreenOnDay onDay =
                new AssessGreen(session).judged(question, green.hole().id()).green();
        GreenDrawing drawing = GreenDrawing.of(onDay.judgement(), onDay.ground())
                .withTitle(texts.say("map.title", green.hole().id()))
                .groundAlone()
                .withFindings(green.findings());
        return new GreenMap(texts).picture(drawing);
    }
}
