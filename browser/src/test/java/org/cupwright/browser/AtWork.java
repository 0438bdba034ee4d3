package org.cupwright.browser;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands the one workplace to whichever test asks for it, and closes it after the last. */
final class AtWork implements ParameterResolver {
    private static final Namespace OURS = Namespace.create(AtWork.class);

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
        return parameter.getParameter().getType().equals(Workplace.class);
    }

    @Override
    public Workplace resolveParameter(ParameterContext parameter, ExtensionContext test) {
        return test.getRoot().getStore(OURS).computeIfAbsent(Workplace.class, none -> new Workplace(), Workplace.class);
    }
}
