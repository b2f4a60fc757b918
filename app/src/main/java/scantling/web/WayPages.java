package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import scantling.construct.Finding;
import scantling.shop.Act;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Recorded;
import scantling.web.Answers.Said;

/** What would clear a finding: changes that were tried out, each done with one act. */
final class WayPages {
    private static final int LETTERS = 26;

    private final Doorway doorway;
    private final Answers answers;

    WayPages(Doorway doorway, Answers answers) {
        this.doorway = doorway;
        this.answers = answers;
    }

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}/ways", this::ways);
        routes.post("/jobs/{job}/again", this::again);
    }

    private void ways(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        List<Finding> findings = job.plan().findings();
        int index = index(Requests.query(ctx, "note"));
        if (index < 0 || index >= findings.size()) {
            throw Refused.noSuch("finding");
        }
        Finding finding = findings.get(index);
        String cut = job.bench().cut().stream()
                .map(each -> each.path())
                .filter(part -> Ways.isAbout(finding, part))
                .findFirst()
                .orElse("");
        doorway.show(
                ctx,
                "ways",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "What would clear it", job, Doorway.isInch(ctx, job)),
                        "job",
                        job.job().id(),
                        "revision",
                        job.revision().number(),
                        "finding",
                        finding,
                        "ways",
                        new Ways(doorway.store(), job, finding).find(),
                        "cut",
                        cut));
    }

    /** Letters count as they do on the sheet: a to z, then aa, ab. */
    static int index(String letters) {
        if (!letters.matches("[a-z]{1,3}")) {
            return -1;
        }
        int index = 0;
        for (int i = 0; i < letters.length(); i++) {
            index = index * LETTERS + letters.charAt(i) - 'a' + 1;
        }
        return index - 1;
    }

    private void again(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        String part = Requests.field(ctx, "part", Requests.LINE);
        Recorded act =
                doorway.mustTake(ctx, new Act.Log(job.job().id(), new BenchEntry.Spoilt(part, "no longer fits")));
        answers.changed(ctx, job.job().id(), Said.done(part + " is to be cut again.", act));
    }
}
