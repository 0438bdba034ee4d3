package org.cupwright.browser;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The line between a telephone and the office, which fails as it is told. It reads whole requests, each on its own. */
final class FaultyLine implements AutoCloseable {
    /** What may become of something that is asked. */
    enum Fault {
        NONE,
        /** The connection breaks before the office has heard of it. */
        LOST_ON_THE_WAY,
        /** The office has heard of it, and nobody hears the answer. */
        ANSWER_LOST,
        /** The office is heard twice: the line asks again of its own. */
        TWICE,
        /** Longer than anybody waits; the office hears of it. */
        SLOW,
        SIGNED_OUT,
        LED_TO_THE_DOORS,
        FAILED,
        UNAVAILABLE,
        /** Somebody else's network answers in the office's place. */
        STRANGER
    }

    /** Decides about each of the phone's own requests, in the order in which they come. */
    interface Faults {
        Fault next(String method, String path);
    }

    /** Longer than the telephones of the tests wait. */
    static final int SLOW_MILLISECONDS = 1500;

    private static final String END = "\r\n\r\n";
    private static final Pattern LENGTH = Pattern.compile("(?im)^content-length: *(\\d+)");
    private static final Pattern CONNECTION = Pattern.compile("(?im)^(connection|accept-encoding):.*\r\n");
    private static final Pattern ASKED = Pattern.compile("^([A-Z]+) ([^ ?]+)");

    private static final Map<Fault, String> ANSWERS = Map.of(
            Fault.SIGNED_OUT, "401 Unauthorized",
            Fault.LED_TO_THE_DOORS, "302 Found\r\nLocation: /sign-in",
            Fault.FAILED, "500 Internal Server Error",
            Fault.UNAVAILABLE, "503 Service Unavailable");

    private final ServerSocket door;
    private final Map<String, String> instead = new ConcurrentHashMap<>();
    private final Map<String, AtomicLong> bytes = new ConcurrentHashMap<>();
    private volatile int office;
    private volatile boolean up = true;
    private volatile boolean packed;
    private volatile Faults faults = (method, path) -> Fault.NONE;

    FaultyLine(int office) {
        this.office = office;
        try {
            door = new ServerSocket(0, 64, InetAddress.getLoopbackAddress());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        thread(this::listen);
    }

    private static void thread(Runnable work) {
        Thread thread = new Thread(work, "line");
        thread.setDaemon(true);
        thread.start();
    }

    String at(String path) {
        return "http://127.0.0.1:" + door.getLocalPort() + path;
    }

    /** The office is at another port. */
    void leadTo(int port) {
        office = port;
    }

    /** With or without a connection at all. */
    void up(boolean is) {
        up = is;
    }

    void faults(Faults told) {
        faults = told;
    }

    /** Says something else of a path than the office would. */
    void say(String path, String text) {
        instead.put(path, text);
    }

    void sayNothing() {
        instead.clear();
    }

    /** Lets the office send as a browser asks for it, and counts what comes. */
    void countPacked() {
        packed = true;
        bytes.clear();
    }

    /** What came of each path, in bytes on the line. */
    Map<String, AtomicLong> bytes() {
        return bytes;
    }

    private void listen() {
        while (!door.isClosed()) {
            try {
                Socket phone = door.accept();
                thread(() -> serve(phone));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void serve(Socket phone) {
        try (phone) {
            byte[] asked = request(phone.getInputStream());
            Matcher what = ASKED.matcher(new String(asked, StandardCharsets.ISO_8859_1));
            if (up && what.find()) {
                byte[] said = said(what.group(1), what.group(2), asked);
                bytes.computeIfAbsent(what.group(2), path -> new AtomicLong()).addAndGet(said.length);
                OutputStream out = phone.getOutputStream();
                out.write(said);
                out.flush();
            }
        } catch (IOException | InterruptedException broken) {
            // as lines break: the telephone sees it
        }
    }

    /** What the telephone hears; nothing where the connection breaks. */
    private byte[] said(String method, String path, byte[] asked) throws IOException, InterruptedException {
        String text = instead.get(path);
        if (text != null) {
            return answer("200 OK\r\nContent-Type: text/javascript\r\nService-Worker-Allowed: /round", text);
        }
        Fault fault = path.matches("/round/(day|who|entries/.*)") ? faults.next(method, path) : Fault.NONE;
        switch (fault) {
            case LOST_ON_THE_WAY:
                return new byte[0];
            case ANSWER_LOST:
                ask(asked);
                return new byte[0];
            case TWICE:
                ask(asked);
                return ask(asked);
            case SLOW:
                byte[] late = ask(asked);
                Thread.sleep(SLOW_MILLISECONDS);
                return late;
            case STRANGER:
                return answer("200 OK\r\nContent-Type: text/html", "<p>Welcome to the guests' network, invented");
            case NONE:
                return ask(asked);
            default:
                return answer(ANSWERS.get(fault), "");
        }
    }

    private static byte[] answer(String head, String body) {
        byte[] text = body.getBytes(StandardCharsets.UTF_8);
        return ("HTTP/1.1 " + head + "\r\nContent-Length: " + text.length + "\r\nConnection: close" + END + body)
                .getBytes(StandardCharsets.UTF_8);
    }

    private byte[] ask(byte[] asked) throws IOException {
        try (Socket line = new Socket(InetAddress.getLoopbackAddress(), office)) {
            line.getOutputStream().write(asked);
            line.getOutputStream().flush();
            return line.getInputStream().readAllBytes();
        }
    }

    /** One request whole; it is the last of its connection, so that the answer ends where that ends. */
    private byte[] request(InputStream from) throws IOException {
        InputStream in = new BufferedInputStream(from);
        String text = head(in);
        Matcher length = LENGTH.matcher(text);
        byte[] body = length.find() ? in.readNBytes(Integer.parseInt(length.group(1))) : new byte[0];
        String kept = packed
                ? text.replaceAll("(?im)^connection:.*\r\n", "")
                : CONNECTION.matcher(text).replaceAll("");
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(kept.replaceFirst("\r\n", "\r\nConnection: close\r\n").getBytes(StandardCharsets.ISO_8859_1));
        whole.writeBytes(body);
        return whole.toByteArray();
    }

    private static String head(InputStream in) throws IOException {
        StringBuilder head = new StringBuilder();
        for (int next = in.read(); next >= 0; next = in.read()) {
            head.append((char) next);
            if (next == '\n'
                    && head.length() >= END.length()
                    && head.lastIndexOf(END) == head.length() - END.length()) {
                return head.toString();
            }
        }
        return "";
    }

    @Override
    public void close() {
        try {
            door.close();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
