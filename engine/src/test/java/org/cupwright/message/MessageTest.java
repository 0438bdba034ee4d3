package org.cupwright.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Field;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Message.Slope;
import org.cupwright.message.Message.SlopePoints;
import org.junit.jupiter.api.Test;

class MessageTest {
    @Test
    void amountsKeepTheirNumberAndUnit() {
        assertThat(Amount.of(new Length(2.5))).contains(new Amount(2.5, "m"));
        assertThat(Amount.of(new Area(40))).contains(new Amount(40, "m²"));
        assertThat(Amount.of(new Slope(1.75))).contains(new Amount(1.75, "%"));
        assertThat(Amount.of(new SlopePoints(0.3))).contains(new Amount(0.3, "points"));
        assertThat(Amount.of(new Count(18))).contains(new Amount(18, ""));
        assertThat(Amount.of(new Name("18"))).isEmpty();
    }

    @Test
    void aProblemSaysWhatWhereWhichValueAndWhatToTry() {
        Problem problem = Problem.of("noPlan", "date", 7, new Name("Monday"));
        assertThat(problem.what()).isEqualTo(Message.of("problem.noPlan", new Name("Monday")));
        assertThat(problem.where()).containsExactly(Message.of("where.field", new Field("date")));
        assertThat(problem.value()).isEqualTo(new Name("7"));
        assertThat(problem.tryThis()).isEqualTo(Message.of("try.noPlan", new Name("Monday")));
        assertThat(problem).hasMessageContaining("problem.noPlan").hasMessageContaining("7");
        assertThat(problem.getStackTrace()).isEmpty();
    }

    @Test
    void aProblemOfATableLeavesItToTheTableWhereItIs() {
        Problem problem = Problem.of(Message.of("problem.cell"), Message.of("try.cell"));
        assertThat(problem.where()).isEmpty();
        assertThat(problem.value()).isEqualTo(new Name(""));
        assertThat(problem.what()).isEqualTo(Message.of("problem.cell"));
        assertThat(problem.tryThis()).isEqualTo(Message.of("try.cell"));
    }

    @Test
    void whatIsSaidWithinASentenceMayBeOneOrSeveral() {
        Message one = Message.of("one");
        assertThat(new Said(one)).isEqualTo(new Said(List.of(one)));
        assertThat(new Said(one).all()).containsExactly(one);
    }
}
