package org.cupwright.app.wiring.server;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.cli.command.Serving.Request;
import org.cupwright.app.people.Passwords;
import org.cupwright.app.people.SlowDown;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.access.Route;
import org.cupwright.app.visit.access.Routes;
import org.cupwright.app.wiring.server.Accounts.HasToWait;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.util.matcher.RequestMatcher;

/** Who guards the doors: whatever is not allowed by the table of addresses is refused. */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
class Doors {
    private static final System.Logger LOG = System.getLogger(Doors.class.getName());

    /** Nothing from anywhere but here; pictures and styles within pages are no exception. */
    private static final String CONTENT = String.join(
            "; ",
            "default-src 'none'",
            "object-src 'none'",
            "script-src 'self'",
            "style-src 'self'",
            "img-src 'self' data:",
            "font-src 'self'",
            "connect-src 'self'",
            "manifest-src 'self'",
            "form-action 'self'",
            "frame-ancestors 'none'",
            "base-uri 'none'");

    @Bean
    SlowDown slowDown(OfficeHouse house) {
        return new SlowDown(house.clock());
    }

    /** The one provider there is: named a second time, it would be asked, and count, twice at each wrong try. */
    @Bean
    Accounts accounts(OfficeHouse house, Passwords passwords, SlowDown slowDown) {
        return new Accounts(house, passwords, slowDown);
    }

    @Bean
    KnownPhones knownPhones(Accounts accounts, SecureRandom random, Request request) {
        return new KnownPhones(accounts, random, new PhoneCookie(OfficeServer.isEncrypted(request)));
    }

    /** Before everything that asks who it is, and again where a refusal is told. */
    @Bean
    FilterRegistrationBean<LastHop> lastHop(Request request) {
        FilterRegistrationBean<LastHop> filter = new FilterRegistrationBean<>(new LastHop());
        filter.setEnabled(request.behindProxy());
        filter.setOrder(Ordered.HIGHEST_PRECEDENCE);
        filter.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ASYNC, DispatcherType.ERROR);
        return filter;
    }

    @Bean
    SecurityFilterChain guarded(HttpSecurity http, Request request, KnownPhones phones) throws Exception {
        http.authorizeHttpRequests(Doors::allow)
                .formLogin(form -> form.loginPage("/sign-in")
                        .usernameParameter("name")
                        .failureHandler(Doors::refused)
                        .successHandler(new WelcomedIn(phones)))
                .logout(out ->
                        out.logoutUrl("/sign-out").addLogoutHandler(phones).logoutSuccessUrl("/sign-in"))
                .headers(headers -> headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT))
                        .httpStrictTransportSecurity(always -> encryptedAlways(always, request))
                        .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                        .permissionsPolicyHeader(
                                permissions -> permissions.policy("camera=(), microphone=(), payment=(), usb=()")));
        http.requestCache(cache -> cache.requestCache(ComeIn.wanted()));
        http.exceptionHandling(
                refusals -> refusals.authenticationEntryPoint((asked, answer, why) -> ComeIn.lead(asked, answer))
                        .accessDeniedHandler(Doors::notTaken));
        // before a form's token is looked for, which reads what was sent
        http.addFilterBefore(new HostsKnown(request), CsrfFilter.class);
        http.addFilterBefore(request.demo() ? new OpenDemo() : new StillIn(phones), CsrfFilter.class);
        http.addFilterBefore(new FilesTaken(OfficeServer.LARGEST_REQUEST.toBytes()), CsrfFilter.class);
        return http.build();
    }

    /**
     * Browsers that came encrypted once come so for a year. Of other names than the one asked for nothing is known; and
     * this machine's own name is that of whatever else runs on it.
     */
    private static void encryptedAlways(HeadersConfigurer<HttpSecurity>.HstsConfig always, Request request) {
        if (HostsKnown.isAlone(request)) {
            always.disable();
        } else {
            always.includeSubDomains(false);
        }
    }

    /** Where somebody has to wait before trying again, the page says how long. */
    private static void refused(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
            throws IOException {
        String how = why instanceof HasToWait wait ? "wait=" + (wait.left().toSeconds() + 1) : "refused";
        response.sendRedirect(request.getContextPath() + "/sign-in?" + how);
    }

    /**
     * Whoever was signed in when the form was shown, and is not any more, signs in; others are told whether it is not
     * theirs, or nothing at all.
     */
    private static void notTaken(HttpServletRequest request, HttpServletResponse response, AccessDeniedException why)
            throws IOException {
        if (ComeIn.isIn()) {
            Optional<Route> known = Addresses.find(request);
            known.ifPresent(
                    route -> LOG.log(System.Logger.Level.INFO, "refused: " + route.method() + " " + route.pattern()));
            response.sendError(known.isPresent() ? HttpServletResponse.SC_FORBIDDEN : HttpServletResponse.SC_NOT_FOUND);
        } else {
            ComeIn.lead(request, response);
        }
    }

    private static void allow(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry requests) {
        for (Route route : Routes.ALL) {
            RequestMatcher matcher = Addresses.of(route);
            if (route.open()) {
                requests.requestMatchers(matcher).permitAll();
            } else {
                requests.requestMatchers(matcher).hasAnyAuthority(names(route));
            }
        }
        requests.dispatcherTypeMatchers(DispatcherType.ERROR).permitAll(); // what is said of a refusal
        requests.anyRequest().denyAll();
    }

    private static String[] names(Route route) {
        List<String> kinds = route.byPin() ? List.of(Accounts.ROLE, Accounts.BY_PIN) : List.of(Accounts.ROLE);
        return route.roles().stream()
                .flatMap(role -> kinds.stream().map(kind -> kind + role.name()))
                .toArray(String[]::new);
    }
}
