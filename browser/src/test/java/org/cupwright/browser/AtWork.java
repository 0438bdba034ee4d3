package org.cupwright.browser;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands the one workplace of the process to whichever test asks for it, and closes it after the last. It is kept with
 * the launcher's session: Maven hands test classes to its processes one by one, as a run of its own each.
 */
final class AtWork implements ParameterResolver {
    private static final Namespace OURS = Namespace.create(AtWork.class);

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
        return parameter.getParameter().getType().equals(Workplace.class);
    }

    @Override
    public Workplace resolveParameter(ParameterContext parameter, ExtensionContext test) {
        return test.getStore(StoreScope.LAUNCHER_SESSION, OURS)
                .computeIfAbsent(Workplace.class, none -> Workplace.begun(), Workplace.class);
    }
}
