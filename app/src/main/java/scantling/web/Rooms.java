package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import scantling.shop.ShopDays;

/** All groups of pages. */
record Rooms(
        Doorway doorway,
        Sheets sheets,
        Pairing pairing,
        Hosts hosts,
        SawSearch search,
        Watchers watchers,
        ShopDays days,
        Clock clock) {
    private static final String AWAITED = "awaited";

    void open(RoutesConfig routes) {
        Answers answers = new Answers(doorway, sheets);
        routes.before("/jobs/*", this::beginAnswer);
        routes.after("/jobs/*", this::endAnswer);
        routes.get("/assets/{name}", doorway.assets()::serve);
        routes.get(Doors.MARK, doorway.assets()::serveMark);
        new HomePages(doorway, days, clock).open(routes);
        new JobPages(doorway, sheets, answers).open(routes);
        new PaperPages(doorway, clock).open(routes);
        new GuidePages(doorway).open(routes);
        new WatchPages(doorway, sheets, search, watchers).open(routes);
        new VersionPages(doorway, answers).open(routes);
        new NumberPages(doorway, answers).open(routes);
        new BenchPages(doorway, days, search, clock).open(routes);
        new TextPages(doorway).open(routes);
        new RoundPages(doorway).open(routes);
        new WayPages(doorway, answers).open(routes);
        new AskPages(doorway, answers).open(routes);
        new RackPages(doorway).open(routes);
        new SupplyPages(doorway).open(routes);
        new ClientPages(doorway).open(routes);
        new ShopActs(doorway).open(routes);
        new SettingsPages(doorway, clock).open(routes);
        new PairPages(doorway, pairing, hosts, clock).open(routes);
    }

    /** The processors are for whoever waits; a search goes on afterwards. A page that only listens waits for nothing. */
    private void beginAnswer(Context ctx) {
        if (!ctx.path().endsWith(WatchPages.LISTENING)) {
            ctx.attribute(AWAITED, true);
            search.awaited();
        }
    }

    private void endAnswer(Context ctx) {
        if (ctx.attribute(AWAITED) != null) {
            ctx.attribute(AWAITED, null);
            search.awaitedNoMore();
        }
    }
}
