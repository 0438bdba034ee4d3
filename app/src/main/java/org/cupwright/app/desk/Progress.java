package org.cupwright.app.desk;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;

/**
 * How far a longer piece of work has come, and the way to stop it. What works tells of each part that is done; whoever
 * waits may stop it from another thread, and then the next part that is told of ends the work with a problem, before
 * anything was kept.
 */
public final class Progress {
    private final Consumer<Step> listener;
    private Step now = new Step("", 0, 0);
    private volatile boolean stopped;

    /** @param listener is told of every step, never of two at once */
    public Progress(Consumer<Step> listener) {
        this.listener = listener;
    }

    /** Of which nobody is told. */
    public static Progress unheard() {
        return new Progress(step -> {});
    }

    /**
     * Where the work stands.
     *
     * @param stage what is being done, by a plain name: {@code greens}
     * @param done how many parts of it are finished
     * @param all how many there are
     */
    public record Step(String stage, int done, int all) {}

    /** A stage of so many parts begins. */
    public synchronized void begin(String stage, int all) {
        tell(new Step(stage, 0, all));
    }

    /** One more part of the stage is done. */
    public synchronized void oneMore() {
        tell(new Step(now.stage(), now.done() + 1, now.all()));
    }

    /** Works on all parts of a stage, several at once; the results in the order of the parts. */
    public <A, B> List<B> sideBySide(String stage, List<A> parts, Function<A, B> work) {
        begin(stage, parts.size());
        return parts.parallelStream()
                .map(part -> {
                    B result = work.apply(part);
                    oneMore();
                    return result;
                })
                .toList();
    }

    /** Tells how far a stage has come; false when the work is to stop, which then keeps what it has. */
    public synchronized boolean goesOn(String stage, int done, int all) {
        if (!stopped && !now.equals(new Step(stage, done, all))) {
            now = new Step(stage, done, all);
            listener.accept(now);
        }
        return !stopped;
    }

    private void tell(Step step) {
        checkStopped();
        now = step;
        listener.accept(step);
    }

    public void stop() {
        stopped = true;
    }

    /** @throws Problem when the work is to stop */
    public void checkStopped() {
        if (stopped) {
            throw new Problem(
                    Message.of("problem.stopped"), List.of(), new Message.Name(""), Message.of("try.stopped"));
        }
    }
}
