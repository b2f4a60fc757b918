package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseClient;
import scantling.shop.JobPlan;

/** What an open job sheet hears: that it changed elsewhere, and how the search for better saw plans stands. */
final class WatchPages {
    private final Doorway doorway;
    private final Sheets sheets;
    private final SawSearch search;
    private final Watchers watchers;

    WatchPages(Doorway doorway, Sheets sheets, SawSearch search, Watchers watchers) {
        this.doorway = doorway;
        this.sheets = sheets;
        this.search = search;
        this.watchers = watchers;
    }

    void open(RoutesConfig routes) {
        routes.sse("/jobs/{job}/watch", this::watch);
        routes.sse("/jobs/{job}/bench/watch", this::watchAtTheBench);
        routes.post("/jobs/{job}/saw/stop", this::stop);
    }

    private void watch(SseClient client) {
        JobPlan job = doorway.job(client.ctx());
        boolean inch = Doorway.isInch(client.ctx(), job);
        String id = job.job().id();
        watchers.add(id, client, () -> tell(client, id, inch));
        look(job);
    }

    /** Cards hear of another plan, and are told at once what the plan is now: it may have changed since they were made. */
    private void watchAtTheBench(SseClient client) {
        JobPlan job = doorway.job(client.ctx());
        String id = job.job().id();
        watchers.add(
                id,
                client,
                () -> doorway.store().jobBook().planOf(id).ifPresent(now -> client.sendEvent("plan", print(now))));
        client.sendEvent("plan", print(job));
    }

    /** Another for another plan. */
    static String print(JobPlan job) {
        return job instanceof JobPlan.Planned planned
                ? Integer.toHexString(System.identityHashCode(planned.plan()))
                : "";
    }

    private void tell(SseClient client, String id, boolean inch) {
        doorway.store().jobBook().planOf(id).ifPresent(now -> {
            search.awaited();
            try {
                client.sendEvent("sheet", sheets.of(now, inch).version());
            } finally {
                search.awaitedNoMore();
            }
            look(now);
        });
    }

    /** Looks for better saw plans while somebody looks at the sheet. */
    private void look(JobPlan job) {
        if (job instanceof JobPlan.Planned planned && planned.plan().problems().isEmpty()) {
            String id = job.job().id();
            watchers.say(id, "saw", words(search.state(planned.plan())));
            search.begin(id, planned.plan(), state -> {
                watchers.say(id, "saw", words(state));
                watchers.changed(id);
            });
        }
    }

    private void stop(Context ctx) {
        search.stop(doorway.job(ctx).job().id());
        if (Requests.isPart(ctx)) {
            ctx.html("");
        } else {
            ctx.redirect("/jobs/" + ctx.pathParam("job"), HttpStatus.SEE_OTHER);
        }
    }

    static String words(SawSearch.State state) {
        String now = state.used() == 1 ? "One piece of stock is used." : state.used() + " pieces of stock are used.";
        if (state.proven()) {
            return now + " No plan can cost less.";
        }
        String gap = " The best possible is at most %d %% cheaper.".formatted(state.gap());
        return now + gap + (state.running() ? " Looking for better plans ..." : " Not looking any further.");
    }
}
