package scantling.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseClient;
import java.util.Optional;
import scantling.plan.Plan;
import scantling.shop.JobPlan;

/** What an open job sheet hears: that it changed elsewhere, and how the search for better saw plans stands. */
final class WatchPages {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String SAW = "saw";
    /** How the addresses end that a page goes on listening to. */
    static final String LISTENING = "/watch";

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
        routes.sse("/jobs/{job}" + LISTENING, this::watch);
        routes.sse("/jobs/{job}/bench" + LISTENING, this::watchAtTheBench);
        routes.post("/jobs/{job}/saw/stop", this::stop);
        routes.post("/jobs/{job}/saw/again", this::again);
    }

    /** A sheet is told at once what it would be now: it may have changed since it was made, or while the line was cut. */
    private void watch(SseClient client) {
        JobPlan job = doorway.job(client.ctx());
        boolean inch = Doorway.isInch(client.ctx(), job);
        String id = job.job().id();
        watchers.add(id, client, () -> tell(client, id, inch));
        tell(client, id, inch);
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
        findSound(job).ifPresent(plan -> {
            String id = job.job().id();
            search.begin(id, plan, ear(id));
            watchers.say(id, SAW, told(search.state(plan)));
        });
    }

    private static Optional<Plan> findSound(JobPlan job) {
        return job instanceof JobPlan.Planned planned
                        && planned.plan().problems().isEmpty()
                ? Optional.of(planned.plan())
                : Optional.empty();
    }

    private SawSearch.Ear ear(String job) {
        return new SawSearch.Ear() {
            @Override
            public void stands(SawSearch.State state) {
                watchers.say(job, SAW, told(state));
            }

            @Override
            public void better() {
                watchers.changed(job);
            }
        };
    }

    private void stop(Context ctx) {
        search.stop(doorway.job(ctx).job().id());
        answer(ctx);
    }

    private void again(Context ctx) {
        JobPlan job = doorway.job(ctx);
        findSound(job)
                .ifPresent(
                        plan -> search.again(job.job().id(), plan, ear(job.job().id())));
        answer(ctx);
    }

    private static void answer(Context ctx) {
        if (Requests.isPart(ctx)) {
            ctx.html("");
        } else {
            ctx.redirect("/jobs/" + ctx.pathParam("job"), HttpStatus.SEE_OTHER);
        }
    }

    /** As the page's script takes it. */
    static String told(SawSearch.State state) {
        return JSON.createObjectNode()
                .put("words", words(state))
                .put("running", state.running())
                .put("stopped", state.stopped() && !state.proven())
                .put("share", state.share())
                .toString();
    }

    static String words(SawSearch.State state) {
        String now = state.used() == 1 ? "One piece of stock is used." : state.used() + " pieces of stock are used.";
        if (state.proven()) {
            return now + (state.whole() ? " No plan can cost less." : " Not all parts come out of the stock.");
        }
        String gap = " The best possible is at most %d %% cheaper.".formatted(state.gap());
        return now
                + gap
                + (state.running()
                        ? " Looking for better plans, round %d of %d ...".formatted(state.round(), SawSearch.ROUNDS)
                        : " Not looking any further.");
    }
}
