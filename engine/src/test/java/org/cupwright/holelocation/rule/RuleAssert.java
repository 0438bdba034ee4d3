package org.cupwright.holelocation.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Optional;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleResult;

/** Short statements about a rule's result. */
record RuleAssert(RuleResult result) {
    static RuleAssert assertRule(RuleResult result) {
        return new RuleAssert(result);
    }

    RuleAssert says(Outcome outcome, String keyEnd) {
        assertThat(result.outcome()).as("%s", result).isEqualTo(outcome);
        assertThat(result.says().key())
                .as("%s", result)
                .isEqualTo("rule." + result.rule().id() + "." + keyEnd);
        return this;
    }

    RuleAssert leans(Outcome likelier) {
        assertThat(result.leans()).as("%s", result).isEqualTo(Optional.of(likelier));
        return this;
    }

    RuleAssert isClear() {
        assertThat(result.leans()).as("%s", result).isEmpty();
        return this;
    }

    RuleAssert hasMargin(double margin) {
        assertThat(result.margin().orElseThrow()).as("%s", result).isCloseTo(margin, offset(1e-9));
        return this;
    }
}
