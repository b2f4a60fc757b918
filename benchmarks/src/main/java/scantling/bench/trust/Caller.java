package scantling.bench.trust;

import java.io.ByteArrayInputStream;
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
import java.net.http.HttpResponse.BodySubscribers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

/** A browser: keeps cookies, takes answers compressed, sends forms with the stamp that pages carry. */
final class Caller {
    private static final Pattern STAMP = Pattern.compile("name=\"stamp\" (?:content|value)=\"([^\"]*)\"");
    private static final String EVENT = "event:";
    private static final String DATA = "data:";
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final HttpClient client;
    private final String base;

    Caller(int port) {
        this("http://localhost:" + port, new CookieManager());
    }

    /** @param base where the server is found @param cookies what a device keeps */
    Caller(String base, CookieManager cookies) {
        this.base = base;
        this.client = HttpClient.newBuilder()
                .cookieHandler(cookies)
                .connectTimeout(PATIENCE)
                .build();
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(request(path).header("Accept", "text/html").GET().build());
    }

    /** What a page's script asks for. */
    HttpResponse<String> part(String path) throws IOException, InterruptedException {
        return send(request(path).header("HX-Request", "true").GET().build());
    }

    /** What a page's script sends. */
    HttpResponse<String> part(String path, String stamp, Map<String, String> fields)
            throws IOException, InterruptedException {
        return send(request(path)
                .header("HX-Request", "true")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("X-Stamp", stamp)
                .POST(BodyPublishers.ofString(form(fields)))
                .build());
    }

    /** What a page is told as it happens, line by line until the server is gone. @param event of which kind */
    Stream<String> heard(String path, String event) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(base + path))
                .header("Accept", "text/event-stream")
                .GET()
                .build();
        String[] kind = {""};
        return client.send(request, BodyHandlers.ofLines())
                .body()
                .peek(line -> {
                    if (line.startsWith(EVENT)) {
                        kind[0] = line.substring(EVENT.length()).strip();
                    }
                })
                .filter(line -> line.startsWith(DATA) && kind[0].equals(event))
                .map(line -> line.substring(DATA.length()).strip());
    }

    private HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        return client.send(request, answer -> {
            boolean packed =
                    answer.headers().firstValue("Content-Encoding").orElse("").equals("gzip");
            return BodySubscribers.mapping(
                    BodySubscribers.ofByteArray(), bytes -> packed ? unpacked(bytes) : text(bytes));
        });
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static String unpacked(byte[] bytes) {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return text(in.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException("an answer cannot be unpacked", broken);
        }
    }

    /** The stamp of this server's pages. */
    String stamp() throws IOException, InterruptedException {
        return stamp("/new");
    }

    /** The stamp that a page carries. */
    String stamp(String page) throws IOException, InterruptedException {
        Matcher stamp = STAMP.matcher(get(page).body());
        if (!stamp.find()) {
            throw new IOException("the page (%s) carries no stamp".formatted(page));
        }
        return stamp.group(1);
    }

    HttpResponse<String> form(String path, String stamp, Map<String, String> fields)
            throws IOException, InterruptedException {
        return raw(path, stamp, "application/x-www-form-urlencoded", form(fields));
    }

    private static String form(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> coded(field.getKey()) + "=" + coded(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    HttpResponse<String> json(String path, String stamp, String json) throws IOException, InterruptedException {
        return raw(path, stamp, "application/json", json);
    }

    HttpResponse<String> raw(String path, String stamp, String kind, String body)
            throws IOException, InterruptedException {
        HttpRequest request = request(path)
                .header("Content-Type", kind)
                .header("X-Stamp", stamp)
                .POST(BodyPublishers.ofString(body))
                .build();
        return send(request);
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(base + path))
                .header("Accept-Encoding", "gzip")
                .timeout(PATIENCE);
    }

    static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
