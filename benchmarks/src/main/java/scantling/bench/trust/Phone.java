package scantling.bench.trust;

import java.io.IOException;
import java.net.CookieManager;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A phone on the workshop's network: let in once with the code that the desk shows, it keeps its token from then on. */
final class Phone {
    private static final Pattern CODE = Pattern.compile("<p class=\"code\">([^<]+)</p>");
    private static final int SEE_OTHER = 303;
    private static final int FOUND = 302;

    private final CookieManager cookies = new CookieManager();
    private boolean paired;

    /** It, calling a server; paired with it when it is not yet. */
    Caller caller(Served server) throws IOException, InterruptedException {
        if (server.network().isEmpty()) {
            return new Caller(server.port());
        }
        Caller phone = new Caller(server.network().get(), cookies);
        if (!paired) {
            pair(new Caller(server.port()), phone);
            paired = true;
        }
        return phone;
    }

    private static void pair(Caller desk, Caller phone) throws IOException, InterruptedException {
        HttpResponse<String> stranger = phone.get("/jobs/shelf");
        if (stranger.statusCode() != FOUND && stranger.statusCode() != SEE_OTHER) {
            throw new IOException("a phone that is not paired was answered " + stranger.statusCode());
        }
        desk.form("/devices/code", desk.stamp(), Map.of());
        Matcher code = CODE.matcher(desk.get("/devices").body());
        if (!code.find()) {
            throw new IOException("the desk shows no code");
        }
        HttpResponse<String> in =
                phone.form("/pair", phone.stamp("/pair"), Map.of("code", code.group(1), "name", "bench phone"));
        if (in.statusCode() != SEE_OTHER) {
            throw new IOException("the phone was not let in: " + in.statusCode());
        }
    }
}
