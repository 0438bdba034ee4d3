package org.cupwright.holelocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.cupwright.policy.Policy;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

class HoleLocationPolicyTest {
    @Test
    void allSettingsHaveKeysOfTheirOwn() {
        PolicyCatalogue catalogue = new PolicyCatalogue(HoleLocationPolicy.settings());
        assertThat(catalogue.settings()).hasSize(HoleLocationPolicy.settings().size());
        assertThat(catalogue.find("holelocation.edgePaces")).isPresent();
    }

    @Test
    void theFastestSpeedAddsDryingOffsetAndTreatment() {
        Policy policy = Policy.defaults();
        GreenSpeed reading = new GreenSpeed(9.5);
        assertThat(new FastestSpeed(Optional.of(reading), 0, false, false).by(policy))
                .isEqualTo(new GreenSpeed(10));
        assertThat(new FastestSpeed(Optional.of(reading), -0.25, true, true).by(policy))
                .isEqualTo(new GreenSpeed(10.75));
        assertThat(new FastestSpeed(Optional.empty(), 0, false, false).by(policy))
                .isEqualTo(new GreenSpeed(10.5));
    }
}
