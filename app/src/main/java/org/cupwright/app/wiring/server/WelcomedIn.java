package org.cupwright.app.wiring.server;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.cupwright.app.visit.SignedIn;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;

/** Leads whoever typed the password on to what was wanted, and keeps the person signed in where that was ticked. */
final class WelcomedIn extends SavedRequestAwareAuthenticationSuccessHandler {
    private static final String KEEP = "keep";

    private final KnownPhones phones;

    WelcomedIn(KnownPhones phones) {
        this.phones = phones;
        setDefaultTargetUrl("/");
        setRequestCache(ComeIn.wanted());
    }

    @Override
    public void onAuthenticationSuccess(
            HttpServletRequest request, HttpServletResponse response, Authentication welcomed)
            throws IOException, ServletException {
        if (request.getParameter(KEEP) != null && welcomed.getPrincipal() instanceof SignedIn person) {
            phones.keep(person, request, response);
        }
        super.onAuthenticationSuccess(request, response, welcomed);
    }
}
