package scantling.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.compression.Gzip;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import scantling.shop.Photo;
import scantling.shop.ShopDays;
import scantling.shop.ShopStore;
import scantling.shop.ShopTrouble;

/** The pages of one shop, served until it is closed. */
public final class WebServer implements AutoCloseable {
    private static final long MOST_BYTES = 3L * Requests.TEXT;
    private static final long KB = 1_000;
    /** Pages are made for one reader: twice as small again would take three times as long. */
    private static final int LIGHTLY = 1;

    /** A page that is gone is noticed at the second pulse. */
    private static final long PULSE_MILLIS = 3_000;

    /** Half of it for those who are being answered to end by themselves, half after they are told to. */
    private static final long STOP_MILLIS = 1_000;

    private static final int SERVER_TROUBLE = 500;
    private static final int NO_ROOM = 507;

    private final Javalin javalin;
    private final Hosts hosts;
    private final SawSearch search;
    private final Watchers watchers;

    private WebServer(Javalin javalin, Hosts hosts, SawSearch search, Watchers watchers) {
        this.javalin = javalin;
        this.hosts = hosts;
        this.search = search;
        this.watchers = watchers;
    }

    /**
     * How it is served.
     *
     * @param port to listen on; 0 for any that is free
     * @param lan whether paired devices on the workshop's network may come in; else only this very machine can
     */
    public record Options(int port, boolean lan) {}

    /** Starts it. The caller keeps the store and closes it after the server. */
    public static WebServer start(ShopStore store, Options options, Clock clock) {
        Hosts hosts = Hosts.ofThisMachine(options.lan());
        Secrets secrets = new Secrets(store.pageKey());
        Pages pages = new Pages();
        Doors doors = new Doors(hosts, secrets, store.devices()::find);
        SawSearch search = new SawSearch();
        Watchers watchers = new Watchers(search::rest, PULSE_MILLIS);
        Doorway doorway = new Doorway(store, pages, new Assets(), doors, watchers::changed);
        Sheets sheets = new Sheets(store, pages, search::best, secrets.code(6));
        Rooms rooms = new Rooms(
                doorway,
                sheets,
                new Pairing(secrets, clock),
                hosts,
                search,
                watchers,
                new ShopDays(store, clock),
                clock);
        Javalin javalin = Javalin.create(config -> configure(config, options, doors, doorway, rooms));
        javalin.start();
        return new WebServer(javalin, hosts, search, watchers);
    }

    private static void configure(JavalinConfig config, Options options, Doors doors, Doorway doorway, Rooms rooms) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = MOST_BYTES;
        config.http.generateEtags = false;
        config.http.compressionStrategy = new CompressionStrategy(null, new Gzip(LIGHTLY));
        config.jetty.host = options.lan() ? "0.0.0.0" : "127.0.0.1";
        config.jetty.port = options.port();
        config.jetty.multipartConfig.maxFileSize(Photo.MOST_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(Photo.MOST_BYTES + MOST_BYTES, SizeUnit.BYTES);
        config.jetty.modifyServer(WebServer::stopSoon);
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        RoutesConfig routes = config.routes;
        routes.before(doors::enter);
        rooms.open(routes);
        routes.exception(
                Refused.class,
                (refused, ctx) -> refuse(doorway, ctx, refused.status(), refused.sentence(), refused.remedy()));
        routes.exception(
                ShopTrouble.class,
                (trouble, ctx) -> refuse(
                        doorway,
                        ctx,
                        trouble.kind() == ShopTrouble.Kind.DISK_FULL ? NO_ROOM : SERVER_TROUBLE,
                        String.valueOf(trouble.getMessage()),
                        "What was there before is still there."));
        routes.exception(
                HttpResponseException.class,
                (answer, ctx) -> refuse(
                        doorway,
                        ctx,
                        answer.getStatus(),
                        sentence(answer.getStatus()),
                        answer.getStatus() == Refused.TOO_LARGE
                                ? "Go back, shorten it and send it again: nothing of it was written."
                                : "Go back to the jobs in hand."));
    }

    private static String sentence(int status) {
        return switch (status) {
            case Refused.NOT_THERE -> "There is no such page here.";
            case Refused.TOO_LARGE ->
                "What was sent is too long to be taken: at most %d KB are.".formatted(MOST_BYTES / KB);
            default -> "This cannot be taken as it was sent.";
        };
    }

    /** What was answered is on the disk; a page that a sleeping phone does not take is not waited for. */
    private static void stopSoon(Server server) {
        if (server.getThreadPool() instanceof QueuedThreadPool pool) {
            pool.setStopTimeout(STOP_MILLIS);
        }
    }

    private static void refuse(Doorway doorway, Context ctx, int status, String sentence, String remedy) {
        ctx.status(status);
        Answers.Said said = Answers.Said.refused(sentence, remedy, List.of());
        if (Requests.wantsPage(ctx)) {
            doorway.show(ctx, "refused", Map.of("chrome", doorway.chrome(ctx, "Not done"), "said", said));
        } else if (Requests.isPart(ctx)) {
            doorway.show(ctx, "said", Map.of("said", said, "job", ""));
        } else {
            ctx.contentType("text/plain; charset=utf-8");
            ctx.result(sentence + " " + remedy);
        }
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    /** Where the desk finds it. */
    public String address() {
        return "http://localhost:" + port() + "/";
    }

    /** Where phones on the workshop's network find it; none when it listens to this machine only. */
    public List<String> networkAddresses() {
        return hosts.onNetwork().stream()
                .map(address -> "http://%s:%d/".formatted(address, port()))
                .toList();
    }

    @Override
    public void close() {
        search.close();
        watchers.close();
        javalin.stop();
    }
}
