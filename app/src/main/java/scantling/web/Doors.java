package scantling.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import scantling.shop.Device;

/**
 * Who comes in, and what browsers are told never to do with a page. Every request passes here first: its Host must be one
 * of this machine's, a device on the network must be paired, and whatever changes something must come from a page of this
 * server and carry its stamp.
 */
final class Doors {
    /** Name of the cookie in which a paired device keeps its token. */
    static final String TOKEN = "scantling-device";

    /** Name of the form field, and with X- before it of the header, in which a page sends its stamp back. */
    static final String STAMP = "stamp";

    static final String STAMP_HEADER = "X-Stamp";

    /** Where browsers look for a mark beside a file that is no page. */
    static final String MARK = "/favicon.ico";

    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
                    + "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            "X-Frame-Options",
            "DENY",
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Permissions-Policy",
            "camera=(), microphone=(), geolocation=(), payment=(), usb=()",
            "Cache-Control",
            "no-store");

    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

    private final Hosts hosts;
    private final Secrets secrets;
    private final Function<String, Optional<Device>> byToken;

    /** @param byToken the device that holds a token, while it is not revoked */
    Doors(Hosts hosts, Secrets secrets, Function<String, Optional<Device>> byToken) {
        this.hosts = hosts;
        this.secrets = secrets;
        this.byToken = byToken;
    }

    /** Lets a request in, or refuses it. */
    void enter(Context ctx) {
        HEADERS.forEach(ctx::header);
        host(ctx);
        Visitor visitor = visitor(ctx);
        visitor.enter(ctx);
        if (visitor.isStranger() && !isOpen(ctx.path())) {
            stop(ctx);
        } else if (!READING.contains(ctx.method())) {
            sameOrigin(ctx);
            stamp(ctx, visitor);
        }
    }

    private void host(Context ctx) {
        String host = Optional.ofNullable(ctx.header("Host")).orElse("");
        if (!hosts.knows(host, ctx.req().getLocalPort())) {
            throw new Refused(
                    Refused.WRONG_HOST,
                    "This server does not go by the name \"%s\".".formatted(Requests.shown(host)),
                    "Use the address that was shown when it started.");
        }
    }

    private Visitor visitor(Context ctx) {
        if (isThisMachine(ctx.req().getRemoteAddr())) {
            return Visitor.DESK;
        }
        return Optional.ofNullable(ctx.cookie(TOKEN))
                .flatMap(byToken)
                .map(device -> new Visitor(device.id(), device.name(), false))
                .orElse(Visitor.STRANGER);
    }

    private static boolean isThisMachine(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException noAddress) {
            return false;
        }
    }

    /** What a device that is not paired may ask for: the door itself, and what it is painted with. */
    private static boolean isOpen(String path) {
        return path.equals("/pair") || path.startsWith("/assets/") || path.equals(MARK);
    }

    private static void stop(Context ctx) {
        if (ctx.method().equals(HandlerType.GET) && Requests.wantsPage(ctx)) {
            ctx.redirect("/pair");
            ctx.skipRemainingHandlers();
        } else {
            throw new Refused(
                    Refused.NOT_PAIRED,
                    "This device is not paired with the shop.",
                    "Open \"Phones and tablets\" on the desk and scan the code there.");
        }
    }

    private static void sameOrigin(Context ctx) {
        String own = "http://" + ctx.header("Host");
        String origin = Optional.ofNullable(ctx.header("Origin")).orElse(own);
        String site = Optional.ofNullable(ctx.header("Sec-Fetch-Site")).orElse("same-origin");
        if (!origin.equals(own) || !site.equals("same-origin")) {
            throw new Refused(
                    Refused.FORBIDDEN,
                    "This was sent by a page of another site.",
                    "Nothing was changed. Close that page.");
        }
    }

    private void stamp(Context ctx, Visitor visitor) {
        String sent = Optional.ofNullable(ctx.header(STAMP_HEADER))
                .or(() -> Optional.ofNullable(ctx.formParam(STAMP)))
                .orElse("");
        if (!Secrets.same(sent, secrets.stamp(visitor.id()))) {
            throw new Refused(
                    Refused.FORBIDDEN,
                    "This page is too old to send anything.",
                    "Nothing was changed. Load the page again and do it once more.");
        }
    }

    /** The stamp for pages that a visitor gets. */
    String stampFor(Visitor visitor) {
        return secrets.stamp(visitor.id());
    }
}
