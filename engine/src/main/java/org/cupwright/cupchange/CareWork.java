package org.cupwright.cupchange;

import java.time.Instant;

/** What the greens were given or had done to them; without a hole it is all greens. */
public sealed interface CareWork extends Payload {
    @Override
    default boolean needsHole() {
        return false;
    }

    /** A piece of upkeep. */
    enum Upkeep {
        MOWN_SINGLE,
        MOWN_DOUBLE,
        ROLLED,
        HOLLOW_TINED,
        SOLID_TINED,
        VERTICUT,
        TOPDRESSED,
        FED,
        GROWTH_REGULATED;

        /** Whether it breaks or covers the ground so that plugs must knit anew. */
        public boolean disturbsPlugs() {
            return this == HOLLOW_TINED || this == SOLID_TINED || this == TOPDRESSED;
        }
    }

    /** Upkeep was done. */
    record Maintained(Upkeep work) implements CareWork {}

    /**
     * The greens were sprayed.
     *
     * @param reentryFrom when people may go on again, as the product's label says, typed in from it
     */
    record Sprayed(String product, Instant reentryFrom) implements CareWork {
        public Sprayed {
            Checks.word("product", product);
        }
    }

    /** Water was given by hand or sprinkler; 0 says that surely none was. */
    record Irrigated(double millimetres) implements CareWork {
        public Irrigated {
            Checks.between("irrigation", millimetres, 0, 500, "mm");
        }
    }
}
