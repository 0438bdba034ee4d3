package org.cupwright.cupchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PayloadKindsTest {
    /** The names stand in files and stores: a record must not be renamed without a thought for them. */
    @Test
    void kindsKeepTheirNames() {
        assertThat(PayloadKinds.all().keySet())
                .containsExactly(
                        "ballMark",
                        "ballMarksMended",
                        "correction",
                        "cupChanged",
                        "cutSomewhere",
                        "dotPainted",
                        "frost",
                        "groundMarked",
                        "holeMovedInPlay",
                        "irrigated",
                        "learnerSignedOff",
                        "leftInOldHole",
                        "maintained",
                        "noteToNext",
                        "oddSeen",
                        "plugSeen",
                        "plugSet",
                        "plugTended",
                        "rolledByHand",
                        "roundsPlayed",
                        "somethingOdd",
                        "speedRead",
                        "spotCheck",
                        "sprayed",
                        "stopSet",
                        "temporaryGreen",
                        "toolSharpened",
                        "toolsChecked",
                        "weatherEntered",
                        "weatherForecast");
    }

    @Test
    void aPayloadKnowsItsKind() {
        assertThat(PayloadKinds.all()).containsEntry(MadeFacts.cut(1, 1).kind(), CupWork.CupChanged.class);
    }
}
