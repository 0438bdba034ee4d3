package org.cupwright.app.wiring.server;

import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.IThrowableProxy;
import ch.qos.logback.classic.spi.StackTraceElementProxy;
import java.util.StringJoiner;
import org.springframework.boot.logging.structured.StructuredLogFormatter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A line of the office's log: a JSON document with the names of the Elastic Common Schema. Words stand there that are
 * our own alone. What a library says, and the words of a failure, may quote what somebody sent: of these only which
 * class it was, and where.
 */
public final class LogLine implements StructuredLogFormatter<ILoggingEvent> {
    private static final String OURS = "org.cupwright.";
    private static final int MOST_FRAMES = 60;
    private static final int MOST_CAUSES = 10;

    @Override
    public String format(ILoggingEvent event) {
        ObjectNode line = JsonMapper.shared().createObjectNode();
        line.put("@timestamp", event.getInstant().toString());
        line.put("log.level", event.getLevel().toString());
        line.put("log.logger", event.getLoggerName());
        line.put("process.thread.name", thread(event));
        if (event.getLoggerName().startsWith(OURS)) {
            line.put("message", event.getFormattedMessage());
        }
        if (event.getThrowableProxy() != null) {
            line.put("error.type", event.getThrowableProxy().getClassName());
            line.put("error.stack_trace", where(event.getThrowableProxy()));
        }
        return line + "\n";
    }

    private static String thread(ILoggingEvent event) {
        return event.getThreadName() == null ? "" : event.getThreadName();
    }

    private static String where(IThrowableProxy failure) {
        StringJoiner lines = new StringJoiner("\n");
        IThrowableProxy cause = failure;
        for (int depth = 0; cause != null && depth < MOST_CAUSES; depth++) {
            lines.add((depth == 0 ? "" : "caused by ") + cause.getClassName());
            StackTraceElementProxy[] frames = cause.getStackTraceElementProxyArray();
            int own = Math.min(frames.length - cause.getCommonFrames(), MOST_FRAMES);
            for (int i = 0; i < own; i++) {
                lines.add("\t" + frames[i].getSTEAsString());
            }
            cause = cause.getCause();
        }
        return lines.toString();
    }
}
