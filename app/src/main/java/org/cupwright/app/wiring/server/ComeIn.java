package org.cupwright.app.wiring.server;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.cupwright.app.visit.SignedIn;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.savedrequest.HttpSessionRequestCache;

/** Leads whoever is not signed in, or no longer, to where one signs in. */
final class ComeIn {
    private static final String PART = "HX-Request";

    private ComeIn() {}

    /** Who sent a form is told that it was not taken; a part of a page is not replaced by a page, the page goes on. */
    static void lead(HttpServletRequest request, HttpServletResponse response) throws IOException {
        boolean asks = request.getMethod().equals("GET") && request.getHeader(PART) == null;
        lead(request, response, asks ? "/sign-in" : "/sign-in?ended");
    }

    /** Who was signed in and is not any more is told so, whatever was asked for. */
    static void leadOut(HttpServletRequest request, HttpServletResponse response) throws IOException {
        lead(request, response, "/sign-in?ended");
    }

    private static void lead(HttpServletRequest request, HttpServletResponse response, String page) throws IOException {
        String where = request.getContextPath() + page;
        if (request.getHeader(PART) != null) {
            response.setHeader("HX-Redirect", where);
            response.setStatus(HttpServletResponse.SC_UNAUTHORIZED);
        } else {
            response.sendRedirect(where);
        }
    }

    /** Whether somebody is signed in. */
    static boolean isIn() {
        Authentication known = SecurityContextHolder.getContext().getAuthentication();
        return known != null && known.getPrincipal() instanceof SignedIn;
    }

    /** Where somebody goes on after signing in: pages, not parts of them, and nothing that changes anything. */
    static HttpSessionRequestCache wanted() {
        HttpSessionRequestCache wanted = new HttpSessionRequestCache();
        wanted.setRequestMatcher(request -> request.getMethod().equals("GET") && request.getHeader(PART) == null);
        return wanted;
    }
}
