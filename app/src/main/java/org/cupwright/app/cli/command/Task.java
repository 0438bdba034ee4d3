package org.cupwright.app.cli.command;

import java.time.LocalDate;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.desk.policy.ShowPolicy;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.units.UnitSystem;
import picocli.CommandLine.ParameterException;

/** One command being carried out: its options, its data folder, its words and where it writes. */
public final class Task {
    private final CupwrightCommand options;
    private final Surroundings surroundings;
    private final DataFolder folder;

    public Task(CupwrightCommand options, Surroundings surroundings) {
        this.options = options;
        this.surroundings = surroundings;
        this.folder = surroundings.folders().apply(options.data(surroundings.home()));
    }

    public CupwrightCommand options() {
        return options;
    }

    public DataFolder folder() {
        return folder;
    }

    Surroundings surroundings() {
        return surroundings;
    }

    /** The day asked for, or today on the course. */
    public LocalDate day() {
        return options.date().orElseGet(() -> CourseToday.of(folder, options.course(), surroundings.clock()));
    }

    /** The words in the language and units asked for, or those of the policy. */
    public Texts texts() {
        Policy policy = policyOrDefaults();
        String language = options.language().orElseGet(() -> policy.get(DeskPolicy.LANGUAGE));
        UnitSystem units = options.units().orElseGet(() -> policy.get(DeskPolicy.UNITS));
        return Texts.find(language, units, policy.get(PlacePolicy.PACE_METRES))
                .orElseThrow(() -> new ParameterException(
                        options.spec().commandLine(), "There are no texts in the language '" + language + "'."));
    }

    public void print(String line) {
        surroundings.out().println(line);
    }

    private Policy policyOrDefaults() {
        try {
            return new ShowPolicy(folder, Settings.catalogue()).inForce(options.course(), day());
        } catch (Problem cannotTell) {
            return Policy.defaults(); // the command itself meets the same problem, and says it in the default words
        }
    }
}
