package org.cupwright.rotation.weeks;

import java.util.function.IntBinaryOperator;
import java.util.stream.IntStream;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.Term;

/**
 * How even some days of a plan are, all of them together.
 *
 * @param thirdsOff holes that would have to be in another third
 * @param leftRight by how many holes left and right are farther apart than the course allows
 * @param lateral holes off an even spread over left, centre and right
 * @param difficulty holes off the wanted spread over easier, medium and harder
 * @param hardestOffPercent by how many per cent the day that differs most plays harder or easier than usual
 */
public record Evenness(int thirdsOff, double leftRight, double lateral, double difficulty, double hardestOffPercent) {

    /** @param spots by green and day, the number of the spot that has the hole */
    static Evenness of(WeeksModel model, int[] days, IntBinaryOperator spots) {
        int thirdsOff = 0;
        double leftRight = 0;
        double lateral = 0;
        double difficulty = 0;
        double hardest = 0;
        for (int day : days) {
            int of = day;
            int[] chosen = IntStream.range(0, model.greenCount())
                    .map(green -> spots.applyAsInt(green, of))
                    .toArray();
            long tally = 0;
            double leave = 0;
            for (int green = 0; green < chosen.length; green++) {
                if (chosen[green] != GreenTable.NONE) {
                    tally += model.table(green).tally(chosen[green]);
                    leave += model.table(green).leaveOff(chosen[green]);
                }
            }
            Aims aims = model.aims(day);
            thirdsOff += aims.thirdsOff(tally);
            leftRight += aims.ofDay(Term.LEFT_RIGHT, tally);
            lateral += aims.ofDay(Term.LATERAL, tally);
            difficulty += aims.ofDay(Term.DIFFICULTY, tally);
            hardest = Math.max(hardest, model.day(day).percentOff(leave));
        }
        return new Evenness(thirdsOff, leftRight, lateral, difficulty, hardest);
    }
}
