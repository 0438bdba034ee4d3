package org.cupwright.app.people;

import org.cupwright.message.Message.Count;

/** Which PINs are taken: a few digits that are not the first to be tried. */
final class PinRule {
    /** Our choice. */
    static final int SHORTEST = 4;
    /** Our choice. */
    static final int LONGEST = 6;

    private PinRule() {}

    /** @throws org.cupwright.message.Problem if it is none */
    static void check(String pin) {
        if (!pin.matches("[0-9]{" + SHORTEST + "," + LONGEST + "}")) {
            throw PeopleProblems.of("pinDigits", "pin", new Count(SHORTEST), new Count(LONGEST));
        }
        if (isInSteps(pin, 0) || isInSteps(pin, 1) || isInSteps(pin, -1)) {
            throw PeopleProblems.of("pinCommon", "pin");
        }
    }

    /** As 7777, 2345 or 6543. */
    private static boolean isInSteps(String pin, int step) {
        for (int i = 1; i < pin.length(); i++) {
            if (pin.charAt(i) - pin.charAt(i - 1) != step) {
                return false;
            }
        }
        return true;
    }
}
