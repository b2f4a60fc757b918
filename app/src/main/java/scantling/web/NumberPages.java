package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Construction;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.piece.EditResult;
import scantling.piece.PieceEditor;
import scantling.plan.Plan;
import scantling.plan.StandardWoods;
import scantling.shop.Act;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Logged;
import scantling.shop.Recorded;
import scantling.shop.Revision;
import scantling.web.Answers.Said;

/** One number: how it came about, changing it where the text gives it, and what the bench measured. */
final class NumberPages {
    private static final int VALUE = 200;

    private final Doorway doorway;
    private final Answers answers;

    NumberPages(Doorway doorway, Answers answers) {
        this.doorway = doorway;
        this.answers = answers;
    }

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}/number", this::number);
        routes.get("/jobs/{job}/follows", this::follows);
        routes.post("/jobs/{job}/measured", this::measure);
        routes.post("/jobs/{job}/unmeasured", this::unmeasure);
        routes.get("/jobs/{job}/given", this::given);
        routes.post("/jobs/{job}/given", this::edit);
    }

    private static Dim find(JobPlan.Planned job, String name) {
        Dim dim = job.plan().assembly().names().get(name);
        if (dim == null) {
            throw new Refused(
                    Refused.NOT_THERE,
                    "No number of this piece is called \"%s\".".formatted(Requests.shown(name)),
                    "The piece may have changed; load the page again.");
        }
        return dim;
    }

    private void number(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        boolean inch = Doorway.isInch(ctx, job);
        String name = Requests.query(ctx, "name");
        LengthFormat format = Sheets.format(inch);
        Map<String, Object> values = Map.of(
                "job",
                job.job().id(),
                "sum",
                SumView.of(name, find(job, name), format),
                "follow",
                Follow.of(job.plan(), name, format),
                "stamp",
                doorway.chrome(ctx, "").stamp(),
                "inch",
                inch);
        if (Requests.isPart(ctx)) {
            doorway.show(ctx, "sum", values);
        } else {
            doorway.show(
                    ctx,
                    "foundpage",
                    Map.of("chrome", doorway.chrome(ctx, name, job, inch), "part", doorway.part("sum", values)));
        }
    }

    /** What a measurement would do, before it is put in. */
    private void follows(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        boolean inch = Doorway.isInch(ctx, job);
        String name = Requests.query(ctx, "name");
        find(job, name);
        Length size = size(Requests.query(ctx, "size"), inch);
        Plan then = WhatIf.measured(doorway.store(), job, name, size);
        doorway.show(
                ctx,
                "follows",
                Map.of("change", Follow.change(job.plan(), then, name, Follow.MOST, Sheets.format(inch))));
    }

    private static Length size(String said, boolean inch) {
        return SizeField.read(
                said,
                inch,
                "\"%s\" is no size that can be measured.".formatted(Requests.shown(said)),
                "Write a length greater than zero, such as 444.2 or 17 1/2 in.");
    }

    private void measure(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        String name = Requests.field(ctx, "name", Requests.LINE);
        find(job, name);
        boolean inch = Doorway.isInch(ctx, job);
        Length size = size(Requests.field(ctx, "size", VALUE), inch);
        WhatIf.refusal(doorway.store(), job, name, size).ifPresent(refused -> {
            throw refused;
        });
        Recorded act = doorway.mustTake(ctx, new Act.Log(job.job().id(), new BenchEntry.Measured(name, size)));
        answers.changed(
                ctx,
                job.job().id(),
                Said.done("%s measured: %s.".formatted(name, Sheets.format(inch).formatWithUnit(size)), act));
    }

    private void unmeasure(Context ctx) {
        JobPlan job = doorway.job(ctx);
        String name = Requests.field(ctx, "name", Requests.LINE);
        List<Logged> log = new ArrayList<>(doorway.store().bench(job.job().id()));
        Collections.reverse(log);
        for (Logged logged : log) {
            if (logged.inForce()
                    && logged.entry() instanceof BenchEntry.Measured measured
                    && measured.name().equals(name)) {
                doorway.mustTakeToo(ctx, new Act.Undo(logged.act()));
            }
        }
        answers.changed(ctx, job.job().id(), Said.done(name + " is worked out again."));
    }

    /** A page to change one value on, for browsers without scripts. */
    private void given(Context ctx) {
        JobPlan job = doorway.job(ctx);
        PieceEditor.Given given = at(job.revision().text(), Requests.number(Requests.query(ctx, "at"), "at"));
        doorway.show(
                ctx,
                "givenpage",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, given.path(), job, Doorway.isInch(ctx, job)),
                        "job",
                        job.job().id(),
                        "revision",
                        job.revision().number(),
                        "given",
                        given));
    }

    private static PieceEditor.Given at(String text, int start) {
        List<PieceEditor.Given> givens = PieceEditor.givens(text, Construction.language());
        return givens.stream()
                .filter(given ->
                        given.span().start() <= start && start < given.span().end())
                .min((a, b) -> Integer.compare(length(a), length(b)))
                .orElseThrow(() -> new Refused(
                        Refused.NOT_THERE,
                        "Nothing is given there.",
                        "The text may have changed; load the page again."));
    }

    private static int length(PieceEditor.Given given) {
        return given.span().end() - given.span().start();
    }

    private void edit(Context ctx) {
        JobPlan job = doorway.job(ctx);
        int revision = Requests.number(ctx, "revision");
        Revision base = doorway.store().revision(job.job().id(), revision).orElseThrow(() -> Refused.noSuch("version"));
        PieceEditor.Given given = at(base.text(), Requests.number(ctx, "at"));
        String value = Requests.field(ctx, "value", VALUE).strip();
        if (revision != job.revision().number()
                && !isStill(given, job.revision().text())) {
            answers.changed(
                    ctx, job.job().id(), elsewhere(given, value, job.revision().text()));
            return;
        }
        answers.changed(ctx, job.job().id(), changed(ctx, job, given, value));
    }

    /** Whether the text that counts now gives the same there as the page that was looked at. */
    private static boolean isStill(PieceEditor.Given given, String now) {
        return theirs(given, now).filter(given.value()::equals).isPresent();
    }

    private static Optional<String> theirs(PieceEditor.Given given, String now) {
        return PieceEditor.givens(now, Construction.language()).stream()
                .filter(each -> each.path().equals(given.path()))
                .map(PieceEditor.Given::value)
                .findFirst();
    }

    private static Said elsewhere(PieceEditor.Given given, String value, String now) {
        return Said.refused(
                "%s was changed elsewhere meanwhile: it was %s, it is %s now, and you wrote %s."
                        .formatted(
                                given.path(), given.value(), theirs(given, now).orElse("no longer there"), value),
                "Nothing of yours was written. This sheet now shows theirs; write yours again if it is to be.",
                List.of());
    }

    private Said changed(Context ctx, JobPlan job, PieceEditor.Given given, String value) {
        if (given.value().equals(value)) {
            return Said.done("");
        }
        EditResult edited = PieceEditor.replace(
                job.revision().text(), Construction.language(), StandardWoods.standard(), given.path(), value);
        if (edited.text().isEmpty()) {
            return Said.refused("%s stays %s.".formatted(given.path(), given.value()), "", edited.problems());
        }
        return new Putting(doorway)
                .put(
                        ctx,
                        job,
                        edited.text().get(),
                        "%s %s in place of %s".formatted(given.path(), value, given.value()));
    }
}
