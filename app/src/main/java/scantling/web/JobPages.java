package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Map;
import scantling.measure.LengthFormat;
import scantling.packet.JobLines;
import scantling.packet.Packet;
import scantling.packet.PacketPdf;
import scantling.packet.Paper;
import scantling.shop.JobPlan;

/** The job sheet as a whole: reading it, its paper, its units, and finding something in it. */
final class JobPages {
    private static final int YEAR = 365 * 24 * 3600;

    private final Doorway doorway;
    private final Sheets sheets;
    private final Answers answers;

    JobPages(Doorway doorway, Sheets sheets, Answers answers) {
        this.doorway = doorway;
        this.sheets = sheets;
        this.answers = answers;
    }

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}", this::sheet);
        routes.get("/jobs/{job}/since", this::since);
        routes.get("/jobs/{job}/packet.pdf", this::paper);
        routes.get("/jobs/{job}/find", this::find);
        routes.post("/jobs/{job}/units", this::units);
    }

    private void sheet(Context ctx) {
        JobPlan job = doorway.job(ctx);
        boolean inch = Doorway.isInch(ctx, job);
        Sheet sheet = sheets.of(job, inch);
        doorway.show(
                ctx,
                "job",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, job.job().title(), job, inch),
                        "job",
                        job.job(),
                        "revision",
                        job.revision().number(),
                        "sheet",
                        sheet));
    }

    private void since(Context ctx) {
        JobPlan job = doorway.job(ctx);
        boolean inch = Doorway.isInch(ctx, job);
        String version = Requests.query(ctx, "version");
        ctx.html(answers.parts(job, inch, version, Answers.Said.done(news(job, inch, version))));
    }

    private String news(JobPlan job, boolean inch, String version) {
        if (sheets.isOfAnEarlierStart(version)) {
            return "The shop was started anew. This page shows how the job stands now.";
        }
        return sheets.isNews(job, inch, version) ? "Changed elsewhere." : "";
    }

    private void paper(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        Paper paper = Paper.find(Requests.query(ctx, "paper")).orElse(Paper.A4);
        LengthFormat format = Sheets.format(Doorway.isInch(ctx, job));
        JobLines lines = Sheets.lines(doorway.store(), job);
        byte[] pdf = PacketPdf.render(Packet.of(job.plan(), format, lines).content(), paper);
        ctx.contentType("application/pdf");
        ctx.header(
                "Content-Disposition",
                "inline; filename=\"packet-%s.pdf\"".formatted(job.job().id()));
        ctx.result(pdf);
    }

    private void find(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        String words = Requests.query(ctx, "q");
        Finder finder = Finder.of(job.plan(), Sheets.format(Doorway.isInch(ctx, job)));
        List<Finder.Found> called = finder.find(words);
        Map<String, Object> found = Map.of(
                "words",
                words,
                "job",
                job.job().id(),
                "found",
                called,
                "near",
                called.isEmpty() ? finder.nearest(words) : List.of());
        if (Requests.isPart(ctx)) {
            doorway.show(ctx, "found", found);
        } else {
            doorway.show(
                    ctx,
                    "foundpage",
                    Map.of(
                            "chrome",
                            doorway.chrome(ctx, "Found", job, Doorway.isInch(ctx, job)),
                            "part",
                            doorway.part("found", found)));
        }
    }

    private void units(Context ctx) {
        JobPlan job = doorway.job(ctx);
        String unit = Requests.field(ctx, "unit", Requests.LINE).equals("in") ? "in" : "mm";
        Cookie cookie = new Cookie(Doorway.unitsCookie(job.job().id()), unit);
        cookie.setMaxAge(YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        ctx.cookie(cookie);
        String back = Requests.field(ctx, "back", Requests.LINE).equals("bench") ? "/bench" : "";
        ctx.redirect("/jobs/" + job.job().id() + back, HttpStatus.SEE_OTHER);
    }
}
