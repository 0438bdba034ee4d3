package org.cupwright.app.visit;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.cupwright.app.storage.DataFolder;
import org.springframework.core.MethodParameter;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.HandlerInterceptor;

/** Hands the visit to whoever answers a request, and closes its folder afterwards. */
public record VisitArgument(Visits visits) implements HandlerMethodArgumentResolver, HandlerInterceptor {
    private static final String FOLDER = VisitArgument.class.getName() + ".folder";
    private static final String VISIT = VisitArgument.class.getName() + ".visit";

    @Override
    public boolean supportsParameter(MethodParameter parameter) {
        return parameter.getParameterType().equals(Visit.class);
    }

    @Override
    public Visit resolveArgument(
            MethodParameter parameter,
            ModelAndViewContainer container,
            NativeWebRequest request,
            WebDataBinderFactory binders) {
        HttpServletRequest asked = request.getNativeRequest(HttpServletRequest.class);
        DataFolder folder = visits.house().folders().get();
        asked.setAttribute(FOLDER, folder);
        Visit visit = visits.of(asked, SignedIn.of(asked).orElseThrow(), folder);
        asked.setAttribute(VISIT, visit);
        return visit;
    }

    /** The visit of a request, once it is settled. */
    public static Optional<Visit> of(HttpServletRequest request) {
        return Optional.ofNullable((Visit) request.getAttribute(VISIT));
    }

    @Override
    public void afterCompletion(
            HttpServletRequest request, HttpServletResponse response, Object handler, Exception failed) {
        if (request.getAttribute(FOLDER) instanceof DataFolder folder) {
            folder.close();
        }
    }
}
