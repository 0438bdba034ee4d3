package org.cupwright.app.wiring.server;

import java.net.BindException;
import java.nio.channels.UnresolvedAddressException;
import java.util.stream.Stream;
import org.cupwright.app.cli.command.Serving.Request;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.springframework.boot.web.server.PortInUseException;

/** Why the pages could not be opened, as far as a person can mend it. */
final class NotOpened {
    private NotOpened() {}

    /** The problem behind a failure; the failure itself where it is ours. */
    static RuntimeException because(RuntimeException failed, Request request) {
        if (is(failed, PortInUseException.class)) {
            return Problem.of("portTaken", "port", request.port(), new Name("" + request.port()));
        }
        if (is(failed, BindException.class) || is(failed, UnresolvedAddressException.class)) {
            return Problem.of("addressNotOurs", "bind", request.bind(), new Name(request.bind()));
        }
        String text = String.valueOf(
                causes(failed).reduce((outer, inner) -> inner).orElseThrow().getMessage());
        if (request.tls().isPresent() && causes(failed).anyMatch(NotOpened::speaksOfCertificates)) {
            String files = request.tls().get().certificate() + ", "
                    + request.tls().get().key();
            return Problem.of("certificate", "certificate", files, new Name(text));
        }
        return failed;
    }

    private static boolean speaksOfCertificates(Throwable cause) {
        String said = String.valueOf(cause.getMessage());
        return said.contains("PEM") || said.contains("certificate") || said.contains("private key");
    }

    private static boolean is(Throwable failed, Class<? extends Throwable> kind) {
        return causes(failed).anyMatch(kind::isInstance);
    }

    private static Stream<Throwable> causes(Throwable failed) {
        return Stream.iterate(failed, cause -> cause != null, Throwable::getCause);
    }
}
