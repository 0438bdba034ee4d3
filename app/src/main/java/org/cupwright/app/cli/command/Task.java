package org.cupwright.app.cli.command;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.Shapes;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.app.desk.policy.PolicyKeys;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.DayRange;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import picocli.CommandLine.ParameterException;
import tools.jackson.databind.JsonNode;

/** One command being carried out: its options, who gives it, its words and where it writes. */
public final class Task implements AutoCloseable {
    private final CupwrightCommand options;
    private final Surroundings surroundings;
    private final DataFolder folder;
    private Basis basis;
    private Texts texts;
    private Interrupt interrupt;
    private final Set<Message> told = new HashSet<>();
    private int status;

    Task(CupwrightCommand options, Surroundings surroundings) {
        this.options = options;
        this.surroundings = surroundings;
        this.folder = surroundings.folders().apply(options.data(surroundings.home()));
    }

    /** What has to be known of the course before anything can be asked or said; read once. */
    private record Basis(LocalDate today, LocalDate day, Policy policy) {}

    public CupwrightCommand options() {
        return options;
    }

    public DataFolder folder() {
        return folder;
    }

    /** Where the data folder lies. */
    public Path dataFolder() {
        return options.data(surroundings.home());
    }

    /** Opens the pages. */
    public Serving serving() {
        return surroundings.serving();
    }

    /** The session of whoever sits at this machine: it is theirs, and so may they do everything. */
    public Session session() {
        return session(System.getProperty("user.name", "").strip());
    }

    /** The session of somebody who is named. */
    public Session session(PersonOption person) {
        return session(person.name());
    }

    private Session session(String name) {
        return new Session(
                folder,
                new Person(name, Role.SUPERINTENDENT),
                new CourseChoice(options.course()),
                surroundings.clock(),
                UUID::randomUUID,
                speech());
    }

    private Speech speech() {
        Policy policy = basis().policy();
        return new Speech(
                Door.COMMANDS,
                options.language().orElseGet(() -> policy.get(DeskPolicy.LANGUAGE)),
                options.units().orElseGet(() -> policy.get(DeskPolicy.UNITS)),
                policy.get(PlacePolicy.PACE_METRES));
    }

    /** By whose clock moments are told: the course's, or this machine's where no course is meant. */
    public ZoneId zone() {
        try {
            return folder.read(stores ->
                    new CourseChoice(options.course()).in(stores).frame().zone());
        } catch (Problem noneMeant) {
            return surroundings.clock().getZone();
        }
    }

    /** The language set for the course, in which failures are told too; empty where it cannot be told. */
    Optional<String> languageSet() {
        try {
            Policy policy = basis == null ? folder.read(this::policyOfToday) : basis.policy();
            return Optional.of(policy.get(DeskPolicy.LANGUAGE));
        } catch (RuntimeException cannotTell) { // what has to be told is the failure before it
            return Optional.empty();
        }
    }

    private Policy policyOfToday(Stores stores) {
        CourseChoice course = new CourseChoice(options.course());
        return PolicyKeys.history(stores, course).at(CourseToday.of(stores, course, surroundings.clock()));
    }

    /** The day asked for; empty where none was. */
    public Optional<LocalDate> date() {
        return options.date().map(asked -> basis().day());
    }

    /** The day asked for, or today on the course. */
    public LocalDate day() {
        return basis().day();
    }

    /** A day as it is seen from the course's today. */
    public LocalDate day(AskedDay asked) {
        return asked.on(basis().today());
    }

    /** The day that is asked about, at the speed and in the weather asked for. */
    public DayQuestion question() {
        return question(new DayOptions());
    }

    /** The same, with what lies on the greens. */
    public DayQuestion question(DayOptions day) {
        return new DayQuestion(date(), options.speed(), options.rain(), day.ground());
    }

    /** The words in the language and units asked for, or those of the policy. */
    public Texts texts() {
        if (texts == null) {
            Speech speech = speech();
            texts = texts(speech, speech.language()).orElseGet(() -> inDefault(speech));
        }
        return texts;
    }

    private static Optional<Texts> texts(Speech speech, String language) {
        return Texts.find(language, speech.door(), speech.units(), speech.paceMetres());
    }

    /** A language that was asked for is wrong usage; one that was once set is passed over, and that is said. */
    private Texts inDefault(Speech speech) {
        if (options.language().isPresent()) {
            throw new ParameterException(
                    options.spec().commandLine(), "There are no texts in the language '" + speech.language() + "'.");
        }
        Texts words = texts(speech, DeskPolicy.LANGUAGE.defaultValue()).orElseThrow();
        err().println(words.say("policy.noWords", speech.language()));
        return words;
    }

    /** How far longer work has come is told on standard error; Ctrl-C stops it where it can be stopped whole. */
    public Progress progress() {
        Progress progress = new Progress(new ProgressLine(this));
        interrupt = new Interrupt(progress);
        return progress;
    }

    /** Prints what came of it: one JSON document where that was asked for, lines elsewhere. */
    public void answer(Supplier<JsonNode> json, Supplier<Lines> words) {
        if (options.json()) {
            print(Json.document(json.get()));
        } else {
            Layout.set(words.get()).forEach(this::print);
        }
    }

    /** The same of an answer that is JSON as it stands. */
    public void answer(Object said, Supplier<Lines> words) {
        answer(() -> new Shapes(texts()).tree(said), words);
    }

    /** Whether whoever sits there says yes to a question; anything else is a no. Empty when nobody sits there. */
    public Optional<Boolean> ask(String question) {
        surroundings.out().flush();
        return surroundings.asked().apply(question).map(texts()::isYes);
    }

    /** What has to be known of what was read is told before it. */
    void tellRemarks() {
        for (Message remark : folder.remarks()) {
            if (told.add(remark)) {
                err().println(texts().say(remark));
            }
        }
    }

    public void print(String line) {
        tellRemarks();
        surroundings.out().println(line);
    }

    public PrintStream err() {
        return surroundings.err();
    }

    /** The exit status, 0 unless said otherwise. */
    int status() {
        return status;
    }

    /** The command is carried out, and its answer is that something wants mending. */
    public void foundDamage() {
        status = Failures.MENDABLE;
    }

    Surroundings surroundings() {
        return surroundings;
    }

    private Basis basis() {
        if (basis == null) {
            try {
                basis = folder.read(this::basis);
            } catch (
                    Problem cannotTell) { // the command itself meets the same problem, and says it in the default words
                basis = basis(LocalDate.now(surroundings.clock()));
            }
        }
        return basis;
    }

    private Basis basis(Stores stores) {
        CourseChoice course = new CourseChoice(options.course());
        try {
            LocalDate today = CourseToday.of(stores, course, surroundings.clock());
            LocalDate day = asked(today);
            return new Basis(today, day, PolicyKeys.history(stores, course).at(day));
        } catch (Problem cannotTell) { // the command itself meets the same problem, and says it in the default words
            return basis(LocalDate.now(surroundings.clock()));
        }
    }

    /** As long as nothing is known of the course. */
    private Basis basis(LocalDate today) {
        return new Basis(today, asked(today), Policy.defaults());
    }

    private LocalDate asked(LocalDate today) {
        return options.date()
                .map(asked -> DayRange.upTo(today).within(asked.on(today), "date"))
                .orElse(today);
    }

    /** What was opened for the command is closed; whoever waits for its end is told. */
    @Override
    public void close() {
        if (interrupt != null) {
            interrupt.close();
        }
        folder.close();
    }
}
