package org.cupwright.app.wiring.server;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpClient.Redirect;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Somebody who asks for pages, with cookies of his own. */
public final class Caller {
    private static final int LOOK_MILLISECONDS = 200;
    private static final int MOST_LOOKS = 600;

    /** How a page asks again by itself. */
    static final String AWAITED = "hx-trigger=\"every 1s\"";

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private static final String FILE = ".file";
    private static final String BETWEEN = "what-stands-between";

    private final UnaryOperator<String> addresses;
    private final HttpClient client;

    Caller(OpenOffice office) {
        this(office::at);
    }

    /** @param addresses the address of a path of the pages */
    public Caller(UnaryOperator<String> addresses) {
        this(addresses, HttpClient.newBuilder().cookieHandler(new CookieManager()));
    }

    /** @param builder keeps cookies as it is told */
    Caller(UnaryOperator<String> addresses, HttpClient.Builder builder) {
        this.addresses = addresses;
        this.client = builder.followRedirects(Redirect.NEVER).build();
    }

    public HttpResponse<String> get(String path) {
        return send(request(path).GET().build());
    }

    /** What is there, byte for byte. */
    HttpResponse<byte[]> bytes(String path) {
        return send(request(path).GET().build(), BodyHandlers.ofByteArray());
    }

    /** The page of a day once its greens are judged: asked for as long as it says that they are not. */
    public HttpResponse<String> awaited(String path) {
        HttpResponse<String> page = get(path);
        while (page.body().contains(AWAITED)) {
            page = get(path);
        }
        return page;
    }

    /** Where a piece of work leads once it is done; any other address leads to itself. */
    public String worked(String path) throws InterruptedException {
        String next = path;
        for (int look = 0; next.startsWith("/work/") && look < MOST_LOOKS; look++) {
            HttpResponse<String> page = get(next);
            next = page.statusCode() == 200 ? next : leadsTo(page);
            Thread.sleep(LOOK_MILLISECONDS);
        }
        return next;
    }

    /** Sends a form as the page at an address would, with the token that stands there. */
    public HttpResponse<String> post(String from, String path, Map<String, String> fields) {
        Map<String, String> all = new TreeMap<>(fields);
        all.putAll(token(from));
        return postAsItIs(path, all);
    }

    /** The token in a page's forms, which holds as long as one is signed in; nothing where there is none. */
    public Map<String, String> token(String from) {
        Matcher token = TOKEN.matcher(get(from).body());
        return token.find() ? Map.of("_csrf", token.group(1)) : Map.of();
    }

    public HttpResponse<String> postAsItIs(String path, Map<String, String> fields) {
        return send(form(path, fields).build());
    }

    /** A form as it is sent, to which headers can be added. */
    HttpRequest.Builder form(String path, Map<String, String> fields) {
        String form = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form));
    }

    /** Sends a form with files; those of its fields are files whose names end with {@code .file}. */
    HttpResponse<String> sendFiles(String path, Map<String, String> fields) {
        Map<String, String> all = new TreeMap<>(fields);
        all.putAll(token("/password"));
        StringBuilder body = new StringBuilder();
        all.forEach((name, value) -> body.append(part(name, value)));
        return send(request(path)
                .header("Content-Type", "multipart/form-data; boundary=" + BETWEEN)
                .POST(BodyPublishers.ofString(body + "--" + BETWEEN + "--\r\n", StandardCharsets.ISO_8859_1))
                .build());
    }

    private static String part(String name, String value) {
        boolean file = name.endsWith(FILE);
        String field = file ? name.substring(0, name.length() - FILE.length()) : name;
        return "--" + BETWEEN + "\r\nContent-Disposition: form-data; name=\"" + field + "\""
                + (file ? "; filename=\"a file\"" : "") + "\r\n\r\n" + value + "\r\n";
    }

    /** Signs in; answers where the page leads. */
    public String signIn(String name, String password) {
        return leadsTo(post("/sign-in", "/sign-in", Map.of("name", name, "password", password)));
    }

    /** Takes a code; answers where the page leads, or what it says. */
    public String join(String code, String name, String password) {
        HttpResponse<String> said = post("/join", "/join", Map.of("code", code, "name", name, "password", password));
        return said.statusCode() == 200 ? said.body() : leadsTo(said);
    }

    /** Without the address of the pages themselves. */
    public static String leadsTo(HttpResponse<String> answer) {
        return answer.headers()
                .firstValue("Location")
                .map(to -> to.replaceFirst("^https?://[^/]+", ""))
                .orElse("");
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(addresses.apply(path)));
    }

    HttpResponse<String> send(HttpRequest request) {
        return send(request, BodyHandlers.ofString());
    }

    private <T> HttpResponse<T> send(HttpRequest request, HttpResponse.BodyHandler<T> body) {
        try {
            return client.send(request, body);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
