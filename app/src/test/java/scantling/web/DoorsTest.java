package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Who comes in. What is asked of browsers is that of the W3C's Content Security Policy Level 3, the WHATWG's Fetch (Origin,
 * Sec-Fetch-Site, nosniff) and RFC 6265 (cookies); that a stranger's Host is refused is the usual answer to a name made to
 * point at this machine (RFC 9110, 15.5.20: 421).
 */
class DoorsTest {
    private static final int GONE_ELSEWHERE = 303;

    @TempDir
    Path folder;

    private OpenShop shop;

    @BeforeEach
    void open() {
        shop = new OpenShop(folder, true);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Map<String, String> newShelf(String stamp) {
        return Map.of("stamp", stamp, "from", "wall-shelf", "title", "Shelf");
    }

    /** This machine's own address on the network, by which it comes in as a stranger would. */
    private String ownAddress() {
        List<String> addresses = Hosts.ofThisMachine(true).onNetwork();
        assumeTrue(!addresses.isEmpty(), "this machine is on no network");
        return addresses.get(0);
    }

    @Test
    void everyAnswerTellsBrowsersWhatNeverToDo() {
        for (String path : List.of("/", "/assets/desk.js", "/no-such-page", "/pair")) {
            HttpResponse<String> answer = shop.desk().get(path, "Accept", "text/html");
            String policy =
                    answer.headers().firstValue("Content-Security-Policy").orElse("");
            assertTrue(policy.contains("default-src 'none'"), path + policy);
            assertTrue(policy.contains("frame-ancestors 'none'"), path + policy);
            assertFalse(policy.contains("unsafe"), path + policy);
            assertEquals(
                    "nosniff",
                    answer.headers().firstValue("X-Content-Type-Options").orElse(""),
                    path);
            assertEquals("DENY", answer.headers().firstValue("X-Frame-Options").orElse(""), path);
            assertTrue(answer.headers().firstValue("Server").isEmpty(), path);
        }
    }

    @Test
    void noPageHoldsScriptOrStyleOfItsOwn() {
        String job = shop.job("bedside-chest");
        for (String path : List.of("/", "/new", "/devices", "/jobs/" + job)) {
            String page = shop.desk().get(path, "Accept", "text/html").body();
            assertFalse(page.matches("(?s).*<script(?![^>]*src=).*"), path);
            assertFalse(page.contains("<style"), path);
            assertFalse(page.matches("(?s).*<[^>]+ style=\".*"), path);
            assertFalse(page.matches("(?s).*<[^>]+ on[a-z]+=\".*"), path);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"shop.example", "localhost.shop.example", "127.0.0.1.shop.example", "localhost"})
    void anotherNameThanThisMachinesIsRefused(String host) throws IOException {
        assertEquals("421", status("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n"));
    }

    private String status(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", shop.server.port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return answer.split(" ", 3)[1];
        }
    }

    @Test
    void whatAnotherSitesPageSendsIsRefused() {
        OpenShop.Browser desk = shop.desk();
        String stamp = desk.stamp("/new");
        assertEquals(
                403,
                desk.post("/jobs", newShelf(stamp), "Origin", "http://shop.example")
                        .statusCode());
        assertEquals(403, desk.post("/jobs", newShelf(stamp), "Origin", "null").statusCode());
        assertEquals(
                403,
                desk.post("/jobs", newShelf(stamp), "Sec-Fetch-Site", "cross-site")
                        .statusCode());
        assertEquals(
                403,
                desk.post("/jobs", newShelf(stamp), "Sec-Fetch-Site", "same-site")
                        .statusCode());
        assertTrue(shop.store.jobs().isEmpty());
        assertEquals(GONE_ELSEWHERE, desk.post("/jobs", newShelf(stamp)).statusCode());
        assertEquals(1, shop.store.jobs().size());
    }

    @Test
    void nothingIsChangedWithoutTheStampOfAPage() {
        OpenShop.Browser desk = shop.desk();
        assertEquals(403, desk.post("/jobs", newShelf("")).statusCode());
        assertEquals(403, desk.post("/jobs", newShelf("x".repeat(43))).statusCode());
        assertTrue(shop.store.jobs().isEmpty());
    }

    @Test
    void aStrangerOnTheNetworkSeesTheDoorAndNothingElse() {
        String job = shop.job("wall-shelf");
        OpenShop.Browser stranger = shop.from(ownAddress());
        HttpResponse<String> page = stranger.get("/", "Accept", "text/html");
        assertEquals("/pair", page.headers().firstValue("Location").orElse(""));
        assertEquals(401, stranger.get("/jobs/" + job + "/since").statusCode());
        assertEquals(200, stranger.get("/pair").statusCode());
        String stamp = stranger.stamp("/pair");
        assertEquals(401, stranger.post("/jobs", newShelf(stamp)).statusCode());
        assertEquals(401, stranger.get("/devices").statusCode());
    }

    @Test
    void aDeviceComesInWithTheCodeOnceAndIsPutOutAgain() {
        OpenShop.Browser desk = shop.desk();
        desk.post("/devices/code", Map.of("stamp", desk.stamp("/devices")));
        String code = desk.get("/devices").body().replaceAll("(?s).*class=\"code\">([^<]*)<.*", "$1");
        OpenShop.Browser phone = shop.from(ownAddress());
        Map<String, String> wrong = Map.of("stamp", phone.stamp("/pair"), "code", "AAAAAAAAAA", "name", "phone");
        assertEquals(403, phone.post("/pair", wrong).statusCode());
        Map<String, String> right = Map.of("stamp", phone.stamp("/pair"), "code", code, "name", "<b>bench</b>");
        HttpResponse<String> paired = phone.post("/pair", right);
        String cookie = paired.headers().firstValue("Set-Cookie").orElse("");
        assertEquals("/bench", paired.headers().firstValue("Location").orElse(""));
        assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), cookie);
        assertEquals(200, phone.get("/").statusCode());
        assertEquals(403, phone.get("/devices").statusCode(), "devices are let in at the desk only");
        OpenShop.Browser other = shop.from(ownAddress());
        assertEquals(
                403,
                other.post("/pair", Map.of("stamp", other.stamp("/pair"), "code", code))
                        .statusCode());
        String devices = desk.get("/devices").body();
        assertTrue(devices.contains("&lt;b&gt;bench&lt;/b&gt;"), "names are text");
        String id = shop.store.devices().all().get(0).id();
        desk.post("/devices/revoke", Map.of("stamp", desk.stamp("/devices"), "device", id));
        assertEquals(401, phone.get("/").statusCode());
    }

    @Test
    void triesForACodeAreCounted() {
        OpenShop.Browser stranger = shop.from(ownAddress());
        Map<String, String> guess = Map.of("stamp", stranger.stamp("/pair"), "code", "BBBBBBBBBB");
        for (int i = 0; i < 5; i++) {
            assertEquals(403, stranger.post("/pair", guess).statusCode());
        }
        assertEquals(429, stranger.post("/pair", guess).statusCode());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/assets/..%2f..%2fshop.scantling", "/assets/%2e%2e/pom.xml", "/assets/desk.js%00", "/assets/x"})
    void noPathLeadsOutOfTheBuild(String path) {
        assertTrue(shop.desk().get(path).statusCode() >= 400, path);
    }

    @Test
    void whatIsTooLongIsRefused() {
        OpenShop.Browser desk = shop.desk();
        Map<String, String> huge =
                Map.of("stamp", desk.stamp("/new"), "from", "wall-shelf", "title", "x".repeat(5_000));
        assertEquals(413, desk.post("/jobs", huge).statusCode());
        Map<String, String> flood = Map.of("stamp", desk.stamp("/new"), "title", "x".repeat(4_000_000));
        assertTrue(desk.post("/jobs", flood).statusCode() >= 400);
        assertTrue(shop.store.jobs().isEmpty());
    }
}
