package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.shop.Device;
import scantling.shop.Devices;

/** Letting phones and tablets in, and out again. */
public final class PairPages {
    private static final int NAME = 60;
    private static final int HALF_A_YEAR = 183 * 24 * 3600;
    private static final int TRIES = 5;

    private final Doorway doorway;
    private final Pairing pairing;
    private final Hosts hosts;
    private final Clock clock;
    private final RateLimit tries;

    PairPages(Doorway doorway, Pairing pairing, Hosts hosts, Clock clock) {
        this.doorway = doorway;
        this.pairing = pairing;
        this.hosts = hosts;
        this.clock = clock;
        this.tries = new RateLimit(TRIES, Duration.ofMinutes(1), clock);
    }

    void open(RoutesConfig routes) {
        routes.get("/devices", this::devices);
        routes.post("/devices/code", this::begin);
        routes.post("/devices/revoke", this::revoke);
        routes.get("/pair", this::ask);
        routes.post("/pair", this::pair);
    }

    /** A device with the days on which it came and left. */
    public record DeviceLine(String id, String name, String paired, boolean revoked) {}

    private static void deskOnly(Context ctx) {
        if (!Visitor.of(ctx).desk()) {
            throw new Refused(
                    Refused.FORBIDDEN, "Devices are let in and out at the desk only.", "Open this page on the desk.");
        }
    }

    private void devices(Context ctx) {
        deskOnly(ctx);
        Optional<String> code = pairing.current();
        List<DeviceLine> lines =
                doorway.store().devices().all().stream().map(this::line).toList();
        List<String> addresses = hosts.onNetwork().stream()
                .map(address -> "http://%s:%d/pair".formatted(address, ctx.req().getLocalPort()))
                .toList();
        String scan = code.isPresent() && !addresses.isEmpty()
                ? Scan.svg(addresses.get(0) + "?code=" + code.get(), "Scan this with the phone that is to be paired")
                : "";
        doorway.show(
                ctx,
                "devices",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "Phones and tablets"),
                        "devices",
                        lines,
                        "code",
                        code.orElse(""),
                        "scan",
                        scan,
                        "addresses",
                        addresses));
    }

    private DeviceLine line(Device device) {
        return new DeviceLine(
                device.id(),
                device.name(),
                Days.written(device.paired().atZone(clock.getZone())),
                device.revoked().isPresent());
    }

    private void begin(Context ctx) {
        deskOnly(ctx);
        pairing.begin();
        ctx.redirect("/devices", HttpStatus.SEE_OTHER);
    }

    private void revoke(Context ctx) {
        deskOnly(ctx);
        if (!doorway.store().devices().revoke(Requests.field(ctx, "device", Requests.LINE))) {
            throw Refused.noSuch("device");
        }
        ctx.redirect("/devices", HttpStatus.SEE_OTHER);
    }

    private void ask(Context ctx) {
        if (!Visitor.of(ctx).isStranger()) {
            ctx.redirect("/bench", HttpStatus.SEE_OTHER);
            return;
        }
        doorway.show(
                ctx,
                "pair",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "Pair this device"),
                        "code",
                        Requests.query(ctx, "code"),
                        "wrong",
                        ""));
    }

    private void pair(Context ctx) {
        if (!tries.allows(ctx.req().getRemoteAddr())) {
            throw new Refused(
                    Refused.TOO_OFTEN,
                    "Too many codes were tried from this device.",
                    "Wait a minute, then scan again.");
        }
        String name = Requests.field(ctx, "name", NAME).strip();
        if (!pairing.use(Requests.field(ctx, "code", Requests.LINE))) {
            ctx.status(HttpStatus.FORBIDDEN);
            doorway.show(
                    ctx,
                    "pair",
                    Map.of(
                            "chrome",
                            doorway.chrome(ctx, "Pair this device"),
                            "code",
                            "",
                            "wrong",
                            "That code is not good, or no longer. Ask for a new one on the desk."));
            return;
        }
        Devices devices = doorway.store().devices();
        Device.Paired paired = devices.pair(name.isEmpty() ? "Phone" : name);
        Cookie cookie = new Cookie(Doors.TOKEN, paired.token());
        cookie.setMaxAge(HALF_A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        ctx.cookie(cookie);
        ctx.redirect("/bench", HttpStatus.SEE_OTHER);
    }
}
