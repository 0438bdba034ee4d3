package org.cupwright.app.office.weeks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.app.answers.WeekCell;
import org.cupwright.app.answers.WeekCell.Sign;
import org.cupwright.app.desk.plan.ShowWeeks.OfDay;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;

/** The cells of the table of holes by days. */
record WeeksCells(Visit visit, Policy policy, Wished wished) {
    /**
     * A hole on a day.
     *
     * @param id on the page
     * @param value as forms name it: {@code 2026-06-21:7}
     * @param letter the third of the green
     * @param paces on and from the nearer edge
     * @param signs what is out of the usual, as it is printed
     * @param says all of it in words
     * @param looks how it looks, as a class
     * @param wished whether it is to be changed
     * @param draft whether it can be
     */
    record Cell(
            String id,
            String value,
            String letter,
            String paces,
            String signs,
            String says,
            String looks,
            boolean wished,
            boolean draft) {}

    Cell of(String hole, OfDay day) {
        Optional<StoredHole> planned = day.plan().flatMap(plan -> plan.find(hole));
        WeekCell cell = new WeekCell(visit.texts(), planned);
        double pace = policy.get(PlacePolicy.PACE_METRES);
        boolean draft = day.plan().filter(plan -> plan.state() == State.DRAFT).isPresent()
                && !day.date().isBefore(visit.today());
        boolean gathered = wished.isOf(day.date(), hole);
        return new Cell(
                WeeksView.id(day.date(), hole),
                day.date() + ":" + hole,
                cell.number().map(number -> number + " ").orElse("") + cell.letter(),
                cell.onShort(pace)
                        .flatMap(on -> cell.sideShort(pace).map(side -> on + " " + side))
                        .orElse(""),
                cell.signs().stream().map(cell::say).collect(Collectors.joining()),
                says(hole, day, planned, cell, gathered),
                looks(day, cell),
                gathered,
                draft);
    }

    private static String looks(OfDay day, WeekCell cell) {
        List<String> looks = new ArrayList<>();
        day.plan().ifPresent(plan -> looks.add(EnumNames.lowerCamel(plan.state())));
        cell.signs().forEach(sign -> looks.add(EnumNames.lowerCamel(sign)));
        return String.join(" ", looks);
    }

    private String says(String hole, OfDay day, Optional<StoredHole> planned, WeekCell cell, boolean gathered) {
        Texts texts = visit.texts();
        List<String> said = new ArrayList<>();
        said.add(texts.say("weeks.cell", hole, texts.weekday(day.date())));
        said.add(planned.map(StoredHole::position)
                .map(new JudgementText(texts, policy.get(PlacePolicy.PACE_METRES))::where)
                .orElseGet(() -> texts.say("weeks.cell.none")));
        cell.signs().forEach(sign -> said.add(says(sign, planned.orElseThrow())));
        if (gathered) {
            said.add(texts.say("weeks.cell.wished"));
        }
        return String.join(", ", said);
    }

    /** A sign in words. */
    private String says(Sign sign, StoredHole hole) {
        return new SignText(visit.texts()).says(sign, hole);
    }
}
