package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import scantling.shop.Act;
import scantling.shop.Client;
import scantling.shop.Job;

/** For whom jobs are done, and what was agreed of each job: its name, for whom, by when, for how much. */
public final class ClientPages {
    private static final int NAME = 200;
    private static final int NOTE = 20_000;

    private final Doorway doorway;

    ClientPages(Doorway doorway) {
        this.doorway = doorway;
    }

    void open(RoutesConfig routes) {
        routes.get("/clients", this::all);
        routes.post("/clients", this::add);
        routes.get("/clients/{client}", this::one);
        routes.post("/clients/{client}", this::change);
        routes.get("/jobs/{job}/agreed", this::agreed);
        routes.post("/jobs/{job}/agreed", this::agree);
    }

    /** A client with the jobs done for them. */
    public record Line(Client client, List<Job> jobs) {}

    private List<Job> jobsOf(Client client) {
        return doorway.store().jobs().stream()
                .filter(job -> job.client().equals(client.id()))
                .toList();
    }

    static List<Client> byName(Doorway doorway) {
        return doorway.store().clients().stream()
                .sorted(Comparator.comparing((Client client) -> client.name().toLowerCase(java.util.Locale.ROOT))
                        .thenComparing(Client::id))
                .toList();
    }

    private void all(Context ctx) {
        List<Line> lines = byName(doorway).stream()
                .map(client -> new Line(client, jobsOf(client)))
                .toList();
        doorway.show(
                ctx,
                "clients",
                Map.of("chrome", doorway.chrome(ctx, "Clients"), "clients", lines, "lately", ShopActs.lately(doorway)));
    }

    private static Client said(Context ctx, String id) {
        return new Client(
                id,
                Requests.field(ctx, "name", NAME).strip(),
                Requests.field(ctx, "contact", NOTE).strip().replace("\r\n", "\n"),
                Requests.field(ctx, "note", NOTE).strip().replace("\r\n", "\n"));
    }

    private void add(Context ctx) {
        doorway.mustTake(ctx, new Act.AddClient(said(ctx, "")));
        ctx.redirect("/clients", HttpStatus.SEE_OTHER);
    }

    private Client client(Context ctx) {
        return doorway.store().clients().stream()
                .filter(each -> each.id().equals(ctx.pathParam("client")))
                .findFirst()
                .orElseThrow(() -> Refused.noSuch("client"));
    }

    private void one(Context ctx) {
        Client client = client(ctx);
        doorway.show(
                ctx,
                "client",
                Map.of("chrome", doorway.chrome(ctx, client.name()), "line", new Line(client, jobsOf(client))));
    }

    private void change(Context ctx) {
        doorway.mustTake(ctx, new Act.ChangeClient(said(ctx, client(ctx).id())));
        ctx.redirect("/clients", HttpStatus.SEE_OTHER);
    }

    private Job job(Context ctx) {
        return doorway.store().job(ctx.pathParam("job")).orElseThrow(() -> Refused.noSuch("job"));
    }

    private void agreed(Context ctx) {
        Job job = job(ctx);
        Map<String, Object> values = new HashMap<>();
        values.put(
                "chrome",
                doorway.chrome(ctx, "What was agreed", doorway.job(ctx), Doorway.isInch(ctx, doorway.job(ctx))));
        values.put("job", job);
        values.put("price", Prices.written(job.price()));
        values.put("clients", byName(doorway));
        values.put("states", List.of(Job.State.values()));
        doorway.show(ctx, "agreed", values);
    }

    private void agree(Context ctx) {
        Job job = job(ctx);
        Job.State state =
                Job.State.find(Requests.field(ctx, "state", Requests.LINE)).orElse(job.state());
        doorway.mustTake(
                ctx,
                new Act.ChangeJob(new Job(
                        job.id(),
                        Requests.field(ctx, "title", NAME).strip(),
                        Requests.field(ctx, "client", Requests.LINE),
                        Dates.read(Requests.field(ctx, "due", Requests.LINE)),
                        Prices.read(ctx, "price"),
                        state,
                        job.revision())));
        ctx.redirect("/jobs/" + job.id(), HttpStatus.SEE_OTHER);
    }
}
