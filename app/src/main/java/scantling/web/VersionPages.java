package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.drawing.Drawing;
import scantling.drawing.Views;
import scantling.measure.LengthFormat;
import scantling.plan.Plan;
import scantling.shop.Act;
import scantling.shop.Answer;
import scantling.shop.JobPlan;
import scantling.shop.Recorded;
import scantling.shop.Revision;
import scantling.web.Answers.Said;

/** Earlier versions: two side by side, taking acts back and doing them again. */
public final class VersionPages {
    private static final int MOST_MOVES = 200;

    private final Doorway doorway;
    private final Answers answers;

    VersionPages(Doorway doorway, Answers answers) {
        this.doorway = doorway;
        this.answers = answers;
    }

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}/versions", this::compare);
        routes.post("/jobs/{job}/versions/back", this::back);
        routes.post("/jobs/{job}/undo", ctx -> turn(ctx, new Act.Undo(act(ctx))));
        routes.post("/jobs/{job}/redo", ctx -> turn(ctx, new Act.Redo(act(ctx))));
    }

    private static String act(Context ctx) {
        return Requests.field(ctx, "of", Requests.LINE);
    }

    /** An act of this job only: what another job did is not taken back from here. */
    private void turn(Context ctx, Act act) {
        String job = doorway.job(ctx).job().id();
        String of = act instanceof Act.Undo undo ? undo.act() : ((Act.Redo) act).act();
        Recorded found = doorway.store().lastActs(Integer.MAX_VALUE).stream()
                .filter(each -> each.id().equals(of) && each.job().equals(job))
                .findFirst()
                .orElseThrow(() -> Refused.noSuch("act"));
        Optional<Said> weighed = doorway.store()
                .turned(of)
                .flatMap(then -> new Putting(doorway).weighed(ctx, doorway.job(ctx), then.text()));
        if (weighed.isPresent()) {
            answers.changed(ctx, job, weighed.get());
            return;
        }
        Answer answer = doorway.take(ctx, act);
        String words = act instanceof Act.Undo ? "Taken back: " : "Done again: ";
        Said said = answer instanceof Answer.Refused refused
                ? Said.refused(refused.sentence(), refused.remedy(), refused.problems())
                : Said.done(words + found.words() + ".");
        answers.changed(ctx, job, said);
    }

    /** An earlier version counts again, as a new version; where something is cut, after its cost is said and accepted. */
    private void back(Context ctx) {
        JobPlan job = doorway.job(ctx);
        int number = Requests.number(ctx, "to");
        Revision old = doorway.store().revision(job.job().id(), number).orElseThrow(() -> Refused.noSuch("version"));
        answers.changed(
                ctx,
                job.job().id(),
                new Putting(doorway).put(ctx, job, old.text(), "version %d counts again".formatted(number)));
    }

    /**
     * One of two versions.
     *
     * @param number of the version
     * @param words what was changed to make it
     * @param front from before it, as markup; empty when it cannot be built
     */
    public record Side(int number, String words, String front) {}

    private void compare(Context ctx) {
        JobPlan job = doorway.job(ctx);
        boolean inch = Doorway.isInch(ctx, job);
        List<Revision> all = doorway.store().revisions(job.job().id());
        int now = job.revision().number();
        Revision left = pick(ctx, "left", all, Math.max(1, now - 1));
        Revision right = pick(ctx, "right", all, now);
        Optional<Plan> before = plan(job, left);
        Optional<Plan> after = plan(job, right);
        LengthFormat format = Sheets.format(inch);
        Follow.Change change = before.isPresent() && after.isPresent()
                ? Follow.change(before.get(), after.get(), "", MOST_MOVES, format)
                : new Follow.Change(List.of(), 0, List.of(), List.of());
        doorway.show(
                ctx,
                "compare",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "Two versions", job, inch),
                        "job",
                        job.job().id(),
                        "revisions",
                        all,
                        "current",
                        now,
                        "left",
                        side(left, before, format),
                        "right",
                        side(right, after, format),
                        "lines",
                        LineDiff.of(left.text(), right.text()),
                        "change",
                        change));
    }

    private static Revision pick(Context ctx, String side, List<Revision> all, int usual) {
        String said = Requests.query(ctx, side);
        int number = said.isEmpty() ? usual : Requests.number(said, side);
        return all.stream()
                .filter(each -> each.number() == number)
                .findFirst()
                .orElseThrow(() -> Refused.noSuch("version"));
    }

    private Optional<Plan> plan(JobPlan job, Revision revision) {
        return doorway.store()
                .jobBook()
                .planOf(job.job().id(), revision.number())
                .filter(JobPlan.Planned.class::isInstance)
                .map(found -> ((JobPlan.Planned) found).plan())
                .filter(plan -> plan.problems().isEmpty());
    }

    private static Side side(Revision revision, Optional<Plan> plan, LengthFormat format) {
        String front = plan.map(found -> new Views(found.assembly(), format).front())
                .map(Drawing::screenSvg)
                .orElse("");
        return new Side(revision.number(), revision.words(), front);
    }
}
