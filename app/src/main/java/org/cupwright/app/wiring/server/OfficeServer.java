package org.cupwright.app.wiring.server;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.function.Function;
import org.cupwright.app.cli.command.Serving;
import org.cupwright.app.cli.command.Version;
import org.cupwright.app.field.FieldConfiguration;
import org.cupwright.app.office.OfficeConfiguration;
import org.cupwright.app.people.FirstSuperintendent;
import org.cupwright.app.people.NewCode;
import org.cupwright.app.people.Passwords;
import org.cupwright.app.storage.Memory;
import org.cupwright.app.store.RecentResults;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.OfficeHouse;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ApplicationListener;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.util.unit.DataSize;

/**
 * Serves the pages until the program is told to end.
 *
 * @param clock the time
 * @param random codes and salts
 * @param passwords how they are kept
 */
public record OfficeServer(Clock clock, SecureRandom random, Function<SecureRandom, Passwords> passwords)
        implements Serving {
    public OfficeServer(Clock clock) {
        this(clock, new SecureRandom(), Passwords::new);
    }

    /** Results, most of them greens judged: two courses of eighteen on two days, and some. Our choice. */
    private static final int REMEMBERED = 96;

    /** As large as the largest map that is read; larger surveys come in by the import command. Our choice. */
    private static final DataSize LARGEST_FILE = DataSize.ofMegabytes(256);

    /** What stands about the files of a form. */
    static final DataSize LARGEST_REQUEST = DataSize.ofMegabytes(257);

    /** What the round is made of, and the day: read where there is little connection. No page with a form. */
    private static final String COMPRESSED =
            "text/css,text/javascript,application/json,application/manifest+json,image/svg+xml,font/ttf";

    @Configuration(proxyBeanMethods = false)
    @EnableAutoConfiguration(exclude = UserDetailsServiceAutoConfiguration.class)
    @Import({OfficeConfiguration.class, FieldConfiguration.class, Doors.class})
    static class Pages {}

    @Override
    public void serve(Request request, Consumer<Opened> opened, PrintStream err) {
        Optional<String> code = code(request); // first of all: whatever keeps the folder from being used is told
        CountDownLatch closed = new CountDownLatch(1);
        ServletWebServerApplicationContext context = start(request, closed);
        opened.accept(new Opened(address(request, context.getWebServer().getPort()), code));
        try {
            closed.await();
        } catch (InterruptedException ended) {
            context.close(); // whole, and its log with it, so that another can be opened
            Thread.currentThread().interrupt();
        }
    }

    private static String address(Request request, int port) {
        String scheme = request.tls().isPresent() ? "https" : "http";
        String host = Serving.isLoopback(request.bind()) ? "localhost" : request.bind();
        return scheme + "://" + host + ":" + port + "/";
    }

    private ServletWebServerApplicationContext start(Request request, CountDownLatch closed) {
        SpringApplication application = new SpringApplication(Pages.class);
        application.setBannerMode(Banner.Mode.OFF);
        application.setWebApplicationType(WebApplicationType.SERVLET);
        application.setLogStartupInfo(false);
        application.setDefaultProperties(properties(request));
        application.addInitializers((ApplicationContextInitializer<GenericApplicationContext>) context -> {
            context.registerBean(OfficeHouse.class, () -> house(request));
            context.registerBean(Request.class, () -> request);
            context.registerBean(SecureRandom.class, () -> random);
            context.registerBean(Passwords.class, () -> passwords.apply(random));
        });
        application.addListeners((ApplicationListener<ContextClosedEvent>) event -> closed.countDown());
        try {
            return (ServletWebServerApplicationContext) application.run();
        } catch (RuntimeException failed) {
            throw NotOpened.because(failed, request);
        }
    }

    /** The invented course needs no code: it is open to whoever sits there. */
    private Optional<String> code(Request request) {
        if (request.demo()) {
            return Optional.empty();
        }
        try (SqliteFolder folder = new SqliteFolder(request.data(), clock)) {
            return new FirstSuperintendent(folder, clock, random).code().map(NewCode::code);
        }
    }

    private OfficeHouse house(Request request) {
        Memory memory = new RecentResults(REMEMBERED);
        return new OfficeHouse(
                () -> new SqliteFolder(request.data(), clock, memory), clock, Version.text(), request.demo());
    }

    /** Beside the data, or where there is room for what is passing if nothing may be written there. */
    private static Path log(Path data) {
        Path beside = data.resolve("log");
        try {
            Files.createDirectories(beside);
        } catch (IOException refused) {
            return temporary();
        }
        return Files.isWritable(beside) ? beside.resolve("office.log") : temporary();
    }

    private static Path temporary() {
        return Path.of(System.getProperty("java.io.tmpdir"), "cupwright-office.log");
    }

    static boolean isEncrypted(Request request) {
        return request.tls().isPresent() || request.behindProxy();
    }

    /** With that prefix browsers take the cookie from this host alone, encrypted, and for all of its pages. */
    private static String cookie(Request request) {
        return isEncrypted(request) ? "__Host-cupwright" : "cupwright";
    }

    private static Map<String, Object> properties(Request request) {
        Map<String, Object> properties = new HashMap<>();
        properties.put("server.address", request.bind());
        properties.put("server.port", request.port());
        properties.put("server.forward-headers-strategy", "none"); // LastHop reads them
        properties.put("server.tomcat.use-relative-redirects", true);
        properties.put("server.servlet.session.cookie.name", cookie(request));
        properties.put("server.servlet.session.cookie.http-only", true);
        properties.put("server.servlet.session.cookie.same-site", "lax");
        properties.put("server.servlet.session.cookie.secure", isEncrypted(request));
        properties.put("server.servlet.session.tracking-modes", "cookie");
        properties.put("server.servlet.session.timeout", StillIn.WITHOUT_A_CLICK.toString());
        properties.put("server.error.whitelabel.enabled", false);
        properties.put("server.compression.enabled", true);
        properties.put("server.compression.mime-types", COMPRESSED);
        properties.put("server.shutdown", "graceful");
        properties.put("spring.lifecycle.timeout-per-shutdown-phase", "10s");
        properties.put("spring.main.lazy-initialization", false);
        properties.put("spring.thymeleaf.prefix", "classpath:/org/cupwright/app/office/pages/");
        properties.put("spring.thymeleaf.check-template-location", false);
        properties.put(
                "spring.thymeleaf.servlet.produce-partial-output-while-processing", false); // whole, or not at all
        properties.put("spring.web.resources.add-mappings", true);
        properties.put("spring.web.resources.static-locations", "classpath:/org/cupwright/app/office/none/");
        properties.put("spring.jmx.enabled", false);
        properties.put("spring.servlet.multipart.max-file-size", LARGEST_FILE.toString());
        properties.put("spring.servlet.multipart.max-request-size", LARGEST_REQUEST.toString());
        properties.put("logging.file.name", log(request.data()).toString());
        properties.put("logging.config", "classpath:org/cupwright/app/wiring/server/log.xml");
        request.tls().ifPresent(tls -> {
            properties.put("server.ssl.bundle", "office");
            OfficeCertificate read = OfficeCertificate.read(tls);
            properties.put("spring.ssl.bundle.pem.office.keystore.certificate", read.certificate());
            properties.put("spring.ssl.bundle.pem.office.keystore.private-key", read.key());
        });
        return properties;
    }
}
