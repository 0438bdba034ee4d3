package org.cupwright.finding;

import org.cupwright.message.Message;

/** Places in a source, as {@link Finding#where} names them. */
public final class Where {
    private Where() {}

    /** The file as a whole. */
    public static Message file() {
        return Message.of("survey.where.file");
    }

    /** A line of a text file, the first being 1. */
    public static Message line(long number) {
        return Message.of("survey.where.line", new Message.Count(number));
    }

    /** A line and a column of a text file, both counted from 1. */
    public static Message lineAndColumn(long line, long column) {
        return Message.of("survey.where.lineAndColumn", new Message.Count(line), new Message.Count(column));
    }

    /** A feature of a map file: its number in the file, the first being 1, and what the file calls it. */
    public static Message feature(long number, String label) {
        return Message.of("survey.where.feature", new Message.Count(number), new Message.Name(label));
    }

    /** A hole of the course. */
    public static Message hole(String holeId) {
        return Message.of("survey.where.hole", new Message.Name(holeId));
    }
}
