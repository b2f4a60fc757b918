package scantling.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import scantling.drawing.Drawing;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Photo;

/** The cards at the bench, and the acts that come from them: in order, each once, whenever the network lets them through. */
public final class BenchPages {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Doorway doorway;
    private final Clock clock;
    private final BenchActs acts;

    BenchPages(Doorway doorway, Clock clock) {
        this.doorway = doorway;
        this.clock = clock;
        this.acts = new BenchActs(doorway);
    }

    void open(RoutesConfig routes) {
        routes.get("/bench", this::jobs);
        routes.get("/jobs/{job}/bench", this::cards);
        routes.get(
                "/jobs/{job}/bench/stamp",
                ctx -> ctx.result(doorway.chrome(ctx, "").stamp()));
        routes.post("/jobs/{job}/bench/acts", this::take);
        routes.get("/photos/{photo}", this::photo);
    }

    private void jobs(Context ctx) {
        doorway.show(
                ctx,
                "benchjobs",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "At the bench"),
                        "jobs",
                        HomePages.inHand(doorway.store().jobs())));
    }

    /**
     * A card as it stands.
     *
     * @param card the operation
     * @param number its place among its kind: 2.3
     * @param done whether all of it is
     * @param minutes spent on it
     * @param notes written at it
     */
    public record Shown(BenchCard card, String number, boolean done, int minutes, List<BenchEntry.Note> notes) {}

    private void cards(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        boolean inch = Doorway.isInch(ctx, job);
        LengthFormat format = Sheets.format(inch);
        BenchCards.Deck deck = new PlanCards(job.plan(), format).deck();
        BenchState state = BenchState.of(doorway.store().bench(job.job().id()));
        String id = job.job().id();
        doorway.show(
                ctx,
                "bench",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, job.job().title(), job, inch),
                        "job",
                        id,
                        "cards",
                        shown(deck, state),
                        "done",
                        state.done(),
                        "drawings",
                        deck.drawings().stream().map(Drawing::screenSvg).toList(),
                        "planned",
                        planned(job, deck, format),
                        "waits",
                        Waits.running(doorway.store().bench(id), clock.instant()).stream()
                                .map(wait -> wait.line(job.job().title(), clock.instant()))
                                .toList()));
    }

    private static List<Shown> shown(BenchCards.Deck deck, BenchState state) {
        List<Shown> shown = new ArrayList<>();
        Set<String> stages = new LinkedHashSet<>();
        int inStage = 0;
        for (BenchCard card : deck.cards()) {
            inStage = stages.add(card.stage()) ? 1 : inStage + 1;
            shown.add(new Shown(
                    card,
                    stages.size() + "." + inStage,
                    card.isDone(state.done()),
                    state.minutes().getOrDefault(card.key(), 0),
                    state.notes().getOrDefault(card.key(), List.of())));
        }
        return shown;
    }

    /** What the plan says of the numbers that cards ask to be measured. */
    private static Map<String, String> planned(JobPlan.Planned job, BenchCards.Deck deck, LengthFormat format) {
        Map<String, String> planned = new TreeMap<>();
        Map<String, Dim> names = job.plan().assembly().names();
        for (BenchCard card : deck.cards()) {
            for (String name : card.numbers()) {
                Dim dim = names.get(name);
                if (dim != null) {
                    planned.put(name, format.format(dim.value()));
                }
            }
        }
        return planned;
    }

    private void take(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        List<BenchActs.Outcome> outcomes = acts.take(ctx, job.job().id(), Doorway.isInch(ctx, job), ctx.bodyAsBytes());
        ObjectNode answer = JSON.createObjectNode();
        ArrayNode all = answer.putArray("outcomes");
        for (BenchActs.Outcome outcome : outcomes) {
            all.addObject()
                    .put("id", outcome.id())
                    .put("taken", outcome.taken())
                    .put("said", outcome.said())
                    .put("expected", outcome.expected());
        }
        ctx.contentType("application/json");
        ctx.result(answer.toString());
    }

    private void photo(Context ctx) {
        Photo photo = doorway.store().photo(ctx.pathParam("photo")).orElseThrow(() -> Refused.noSuch("photo"));
        ctx.contentType(photo.kind().equals("jpg") ? "image/jpeg" : "image/" + photo.kind());
        ctx.header("Cache-Control", "private, max-age=31536000, immutable");
        ctx.result(photo.bytes());
    }
}
