package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import scantling.checks.MeasureBefore;
import scantling.construct.Finding;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.plan.BenchRemedies;
import scantling.plan.Shop;
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
        routes.post("/jobs/{job}/worked", this::worked);
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
        // trying out takes a while: the page comes first, and asks for the changes itself
        boolean trying = !Requests.query(ctx, "try").isEmpty();
        Map<String, Object> tried = Map.of(
                "stamp",
                doorway.chrome(ctx, "").stamp(),
                "job",
                job.job().id(),
                "revision",
                job.revision().number(),
                "ways",
                trying ? new Ways(doorway.store(), job, finding).find() : List.of());
        if (trying && Requests.isPart(ctx)) {
            doorway.show(ctx, "tried", tried);
            return;
        }
        doorway.show(
                ctx,
                "ways",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "What would clear it", job, Doorway.isInch(ctx, job)),
                        "job",
                        job.job().id(),
                        "finding",
                        finding,
                        "note",
                        Requests.query(ctx, "note"),
                        "measure",
                        toMeasure(finding),
                        "remedies",
                        remedies(job, cut),
                        "cut",
                        cut,
                        "tried",
                        trying ? doorway.part("tried", tried) : ""));
    }

    /** The number that is to be measured, when that is what clears it. */
    private static String toMeasure(Finding finding) {
        return finding.rule().equals(MeasureBefore.RULE) && !finding.remedy().startsWith(Finding.ACCEPTED)
                ? finding.numbers().stream()
                        .flatMap(number -> number.findPath().stream())
                        .findFirst()
                        .orElse("")
                : "";
    }

    /** What can be done to a part that is cut and no longer fits. */
    private List<BenchRemedies.Remedy> remedies(JobPlan.Planned job, String part) {
        Shop shop = doorway.store().settings().shop(doorway.store().rack());
        return BenchRemedies.of(job.plan(), shop).stream()
                .filter(remedy -> remedy.part().equals(part))
                .toList();
    }

    /** Wood was taken off a part as the plan asks: it is cut again, to the size that is needed now. */
    private void worked(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        String part = Requests.field(ctx, "part", Requests.LINE);
        String size = Requests.field(ctx, "size", Requests.LINE);
        BenchRemedies.Remedy remedy = remedies(job, part).stream()
                .filter(each -> each.kind() == BenchRemedies.Kind.TAKE_OFF
                        && each.size().equals(size))
                .findFirst()
                .orElseThrow(() -> new Refused(
                        Refused.BAD,
                        "Nothing is to be taken off %s.".formatted(Requests.shown(part)),
                        "The plan may have changed; look at the sheet."));
        Dim now = job.plan().assembly().names().get(Ledger.path(part, size));
        if (now == null) {
            throw Refused.noSuch("number");
        }
        Length left = now.value().minus(remedy.amount());
        Recorded act = doorway.mustTake(ctx, new Act.Log(job.job().id(), new BenchEntry.Cut(part, Map.of(size, left))));
        answers.changed(ctx, job.job().id(), Said.done("%s: %s".formatted(part, remedy.sentence()), act));
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
