package org.cupwright.app.field.cases;

import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.Outline;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;

/** A green of which a case says nothing but where its middle lies and how it is played to. */
public final class SquareGreen {
    private SquareGreen() {}

    public static GreenFrame of(Case green) {
        double e = green.point("middle")[0];
        double n = green.point("middle")[1];
        Outline outline = Shapes.rectangle(e - 9, n - 9, e + 9, n + 9);
        Hole hole =
                Hole.of("1", outline).withLineOfPlay(LineOfPlay.towards(outline, new Heading(green.number("heading"))));
        return GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
    }
}
