package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import org.cupwright.policy.PolicyCatalogue;
import org.junit.jupiter.api.Test;

class RotationPolicyTest {
    @Test
    void everySettingIsInTheCatalogueUnderItsSlice() {
        PolicyCatalogue catalogue = new PolicyCatalogue(RotationPolicy.settings());
        assertThat(catalogue.settings()).hasSize(20).allMatch(one -> one.key().startsWith("rotation."));
        for (Term term : Term.values()) {
            assertThat(catalogue.find(term.weight().key())).isPresent();
        }
    }
}
