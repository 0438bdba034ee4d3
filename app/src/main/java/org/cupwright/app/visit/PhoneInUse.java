package org.cupwright.app.visit;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.session.Session;

/** The phone that a request comes from, as far as the office knows it again; the doors answer. */
public interface PhoneInUse {
    /** What came of a name and its PIN. */
    enum Came {
        IN,
        REFUSED,
        HAS_TO_WAIT,
        /** The phone is not a shared one, or no more. */
        NOT_SHARED
    }

    /**
     * What came of a try.
     *
     * @param seconds so long the next one has to wait
     */
    record Tried(Came came, long seconds) {}

    /** Who may be chosen on the phone; empty where it is not a shared one. */
    Optional<List<String>> names(HttpServletRequest request);

    /** Signs somebody in on a shared phone. */
    Tried signIn(HttpServletRequest request, HttpServletResponse response, String name, String pin);

    /**
     * Makes the phone a shared one; whoever is signed in on it is not any more.
     *
     * @throws org.cupwright.message.Problem if that person may not say so
     */
    void share(HttpServletRequest request, HttpServletResponse response, Session session);

    /** Whether somebody may stay signed in here: what comes and goes is encrypted, or never leaves the machine. */
    static boolean mayBeKept(HttpServletRequest request) {
        return request.isSecure() || request.getServerName().matches("localhost|127(\\.\\d+){3}|\\[?:{2}1]?");
    }
}
