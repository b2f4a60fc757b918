package scantling.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.drawing.Views;
import scantling.measure.LengthFormat;
import scantling.piece.Problem;
import scantling.plan.Plan;
import scantling.shop.Act;
import scantling.shop.Answer;
import scantling.shop.JobPlan;
import scantling.web.Answers.Said;

/** The text beside the drawing: what is wrong is underlined where it stands, and what may stand there is offered. */
final class TextPages {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Doorway doorway;

    TextPages(Doorway doorway) {
        this.doorway = doorway;
    }

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}/text", this::page);
        routes.post("/jobs/{job}/text", this::put);
        routes.post("/jobs/{job}/text/check", this::check);
        routes.post("/jobs/{job}/text/complete", this::complete);
    }

    private void page(Context ctx) {
        JobPlan job = doorway.job(ctx);
        show(ctx, job, job.revision().text(), Said.done(""), "");
    }

    private void show(Context ctx, JobPlan job, String text, Said said, String theirs) {
        boolean inch = Doorway.isInch(ctx, job);
        JobPlan tried = doorway.store().jobBook().tryOut(job.job().id(), text).orElse(job);
        doorway.show(
                ctx,
                "text",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, job.job().title(), job, inch),
                        "job",
                        job.job().id(),
                        "revision",
                        job.revision().number(),
                        "text",
                        text,
                        "front",
                        front(tried, Sheets.format(inch)),
                        "problems",
                        Sheets.problems(tried),
                        "said",
                        said,
                        "theirs",
                        theirs,
                        "most",
                        Requests.TEXT));
    }

    private static String front(JobPlan job, LengthFormat format) {
        return job instanceof JobPlan.Planned planned
                        && planned.plan().problems().isEmpty()
                ? new Views(planned.plan().assembly(), format).front().screenSvg()
                : "";
    }

    /** What was sent counts when it was made from the text that counts; else both are shown and nothing is written. */
    private void put(Context ctx) {
        JobPlan job = doorway.job(ctx);
        String text = Requests.field(ctx, "text", Requests.TEXT).replace("\r\n", "\n");
        int revision = Requests.number(ctx, "revision");
        Optional<Said> weighed =
                revision == job.revision().number() ? new Putting(doorway).weighed(ctx, job, text) : Optional.empty();
        if (weighed.isPresent()) {
            show(ctx, job, text, weighed.get(), "");
            return;
        }
        Answer answer = doorway.take(ctx, new Act.EditText(job.job().id(), revision, text, "the text was written"));
        if (answer instanceof Answer.Taken) {
            ctx.redirect("/jobs/" + job.job().id(), HttpStatus.SEE_OTHER);
        } else if (answer instanceof Answer.Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, job, text, Said.refused(refused.sentence(), refused.remedy(), refused.problems()), "");
        } else if (answer instanceof Answer.Stale stale) {
            ctx.status(HttpStatus.CONFLICT);
            Said said = Said.refused(
                    "The text was changed elsewhere meanwhile; nothing of yours was written.",
                    "Yours stands at the left, theirs below it. Put yours in to have it count instead.",
                    List.of());
            show(ctx, doorway.job(ctx), stale.mine(), said, stale.theirs().text());
        }
    }

    private void check(Context ctx) {
        JobPlan job = doorway.job(ctx);
        String text = Requests.field(ctx, "text", Requests.TEXT).replace("\r\n", "\n");
        JobPlan tried = doorway.store().jobBook().tryOut(job.job().id(), text).orElse(job);
        ObjectNode answer = JSON.createObjectNode();
        ArrayNode problems = answer.putArray("problems");
        for (Problem problem : Sheets.problems(tried)) {
            problems.addObject()
                    .put("start", problem.span().start())
                    .put("end", problem.span().end())
                    .put("line", problem.span().line())
                    .put("words", (problem.message() + " " + problem.remedy()).strip());
        }
        answer.put("front", front(tried, Sheets.format(Doorway.isInch(ctx, job))));
        ArrayNode findings = answer.putArray("findings");
        if (tried instanceof JobPlan.Planned planned) {
            Plan plan = planned.plan();
            plan.findings().forEach(finding -> findings.add(finding.sentence()));
        }
        ctx.contentType("application/json");
        ctx.result(answer.toString());
    }

    private void complete(Context ctx) {
        String text = Requests.field(ctx, "text", Requests.TEXT).replace("\r\n", "\n");
        int at = Math.min(text.length(), Requests.number(ctx, "at"));
        ArrayNode offers = JSON.createArrayNode();
        for (Completion.Offer offer : Completion.of(text, at)) {
            offers.addObject()
                    .put("word", offer.word())
                    .put("says", offer.says())
                    .put("typed", offer.typed());
        }
        ctx.contentType("application/json");
        ctx.result(offers.toString());
    }
}
