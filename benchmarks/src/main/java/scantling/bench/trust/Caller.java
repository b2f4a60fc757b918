package scantling.bench.trust;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without scripts: keeps cookies, sends forms with the stamp that pages carry. */
final class Caller {
    private static final Pattern STAMP = Pattern.compile("name=\"stamp\" (?:content|value)=\"([^\"]*)\"");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .connectTimeout(PATIENCE)
            .build();
    private final String base;

    Caller(int port) {
        this.base = "http://localhost:" + port;
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(request(path).header("Accept", "text/html").GET().build(), BodyHandlers.ofString());
    }

    /** The stamp of this server's pages. */
    String stamp() throws IOException, InterruptedException {
        Matcher stamp = STAMP.matcher(get("/new").body());
        if (!stamp.find()) {
            throw new IOException("the page for a new job carries no stamp");
        }
        return stamp.group(1);
    }

    HttpResponse<String> form(String path, String stamp, Map<String, String> fields)
            throws IOException, InterruptedException {
        String form = fields.entrySet().stream()
                .map(field -> coded(field.getKey()) + "=" + coded(field.getValue()))
                .collect(Collectors.joining("&"));
        return raw(path, stamp, "application/x-www-form-urlencoded", form);
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
        return client.send(request, BodyHandlers.ofString());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(base + path)).timeout(PATIENCE);
    }

    static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
