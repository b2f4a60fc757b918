package scantling.web;

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
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import scantling.construct.Starters;
import scantling.shop.Act;
import scantling.shop.Answer;
import scantling.shop.Sent;
import scantling.shop.ShopStore;

/** A shop in a folder with its pages open, and a browser without scripts that keeps its cookies. */
final class OpenShop implements AutoCloseable {
    private static final Pattern STAMP = Pattern.compile("name=\"stamp\" (?:content|value)=\"([^\"]*)\"");

    final ShopStore store;
    final WebServer server;

    OpenShop(Path folder, boolean lan) {
        this.store = ShopStore.open(folder);
        this.server = WebServer.start(store, new WebServer.Options(0, lan), Clock.systemUTC());
    }

    /** Begins a job from a starter. @return its id */
    String job(String starter) {
        try (var in = Starters.open(starter)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return job(starter.replace('-', ' '), text);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    /** Begins a job. @return its id */
    String job(String title, String text) {
        Answer answer = act(new Act.AddJob(title, "", Optional.empty(), text));
        return ((Answer.Taken) answer).act().subject();
    }

    Answer act(Act act) {
        return store.take(Sent.fromDesk(UUID.randomUUID().toString(), act));
    }

    Browser desk() {
        return new Browser("http://localhost:" + server.port());
    }

    /** A browser that comes by an address. */
    Browser from(String address) {
        return new Browser("http://" + address + ":" + server.port());
    }

    /** Looks at pages and sends their forms. */
    static final class Browser {
        private final HttpClient client = HttpClient.newBuilder()
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
        private final String base;

        private Browser(String base) {
            this.base = base;
        }

        HttpResponse<String> get(String path, String... headers) {
            return send(request(path, headers).GET());
        }

        /** The stamp that a page carries. */
        String stamp(String path) {
            Matcher stamp = STAMP.matcher(get(path, "Accept", "text/html").body());
            return stamp.find() ? stamp.group(1) : "";
        }

        HttpResponse<String> post(String path, Map<String, String> fields, String... headers) {
            String form = fields.entrySet().stream()
                    .map(field -> coded(field.getKey()) + "=" + coded(field.getValue()))
                    .collect(Collectors.joining("&"));
            return send(request(path, headers)
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(BodyPublishers.ofString(form)));
        }

        /** Sends JSON. */
        HttpResponse<String> post(String path, String json, String... headers) {
            return send(request(path, headers)
                    .header("Content-Type", "application/json")
                    .POST(BodyPublishers.ofString(json)));
        }

        private HttpRequest.Builder request(String path, String... headers) {
            HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(base + path));
            return headers.length == 0 ? request : request.headers(headers);
        }

        private HttpResponse<String> send(HttpRequest.Builder request) {
            try {
                return client.send(request.build(), BodyHandlers.ofString());
            } catch (IOException unanswered) {
                throw new AssertionError(unanswered);
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new AssertionError(stopped);
            }
        }
    }

    static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
        store.close();
    }
}
