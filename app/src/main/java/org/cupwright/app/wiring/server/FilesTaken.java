package org.cupwright.app.wiring.server;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Files are taken from those who are signed in, and only so large. Whoever is not is refused before any of it is read;
 * what is too large is not kept anywhere.
 */
final class FilesTaken extends OncePerRequestFilter {
    /** So much of what is too large is read and forgotten: browsers show no answer before they sent all. Our choice. */
    private static final int TIMES_READ = 4;

    private static final int CHUNK = 1 << 16;

    private final long mostBytes;

    FilesTaken(long mostBytes) {
        this.mostBytes = mostBytes;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String type = request.getContentType();
        if (type == null || !type.toLowerCase(Locale.ROOT).startsWith("multipart/")) {
            chain.doFilter(request, response);
        } else if (!ComeIn.isIn()) {
            response.setHeader("Connection", "close");
            ComeIn.lead(request, response);
        } else if (request.getContentLengthLong() < 0) {
            response.setHeader("Connection", "close");
            response.sendError(HttpServletResponse.SC_LENGTH_REQUIRED);
        } else if (request.getContentLengthLong() > mostBytes) {
            forget(request.getInputStream());
            response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
        } else {
            chain.doFilter(request, response);
        }
    }

    private void forget(InputStream sent) throws IOException {
        byte[] chunk = new byte[CHUNK];
        long left = TIMES_READ * mostBytes;
        for (int read = sent.read(chunk); read >= 0 && left > 0; read = sent.read(chunk)) {
            left -= read;
        }
    }
}
