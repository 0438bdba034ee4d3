package org.cupwright.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Somebody who asks the office for pages, with cookies of their own. */
final class PageAsker {
    private static final Pattern HIDDEN = Pattern.compile("name=\"(_csrf|seen)\" value=\"([^\"]*)\"");

    private final String address;
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    /** @param address of the office, without a path */
    PageAsker(String address) {
        this.address = address;
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(address + path)).GET().build());
    }

    HttpResponse<String> post(String path, Map<String, String> fields) {
        String form = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return send(HttpRequest.newBuilder(URI.create(address + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form))
                .build());
    }

    /** What a page's forms send unseen: the token, and which plan was seen. */
    Map<String, String> seen(String path) {
        Matcher hidden = HIDDEN.matcher(get(path).body());
        Map<String, String> fields = new TreeMap<>();
        while (hidden.find()) {
            fields.putIfAbsent(hidden.group(1), hidden.group(2));
        }
        return fields;
    }

    /** The path of an address of the office. */
    String path(String location) {
        return location.replaceFirst("^https?://[^/]+", "");
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(ended);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
