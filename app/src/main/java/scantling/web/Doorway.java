package scantling.web;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import scantling.measure.LengthFormat;
import scantling.piece.Problem;
import scantling.shop.Act;
import scantling.shop.Answer;
import scantling.shop.JobPlan;
import scantling.shop.Recorded;
import scantling.shop.Sent;
import scantling.shop.ShopStore;

/** What every group of pages needs: the shop, the templates, who asks, and taking an act with what it says to it. */
final class Doorway {
    private static final String UNITS = "units-";

    private final ShopStore store;
    private final Pages pages;
    private final Assets assets;
    private final Doors doors;
    private final Consumer<String> changed;

    Doorway(ShopStore store, Pages pages, Assets assets, Doors doors, Consumer<String> changed) {
        this.store = store;
        this.pages = pages;
        this.assets = assets;
        this.doors = doors;
        this.changed = changed;
    }

    ShopStore store() {
        return store;
    }

    Assets assets() {
        return assets;
    }

    /** Around a page that is about no job. */
    Chrome chrome(Context ctx, String title) {
        return chrome(ctx, title, Optional.empty(), isInch(ctx));
    }

    /** Around a page about a job. */
    Chrome chrome(Context ctx, String title, JobPlan job, boolean inch) {
        String id = job.job().id();
        return chrome(
                ctx, title, Optional.of(new Chrome.Link("/jobs/" + id, job.job().title())), inch);
    }

    private Chrome chrome(Context ctx, String title, Optional<Chrome.Link> job, boolean inch) {
        Visitor visitor = Visitor.of(ctx);
        return new Chrome(title, doors.stampFor(visitor), visitor, inch, job, assets, ctx.path());
    }

    /** Answers with a page or a part of one. */
    void show(Context ctx, String template, Map<String, Object> values) {
        ctx.html(pages.render(template, values)).contentType("text/html; charset=utf-8");
    }

    String part(String template, Map<String, Object> values) {
        return pages.render(template, values);
    }

    /** The job that an address names, planned. */
    JobPlan job(Context ctx) {
        return store.jobBook().planOf(ctx.pathParam("job")).orElseThrow(() -> Refused.noSuch("job"));
    }

    /** The same, when it can be built as it stands. */
    JobPlan.Planned planned(Context ctx) {
        if (job(ctx) instanceof JobPlan.Planned planned
                && planned.plan().problems().isEmpty()) {
            return planned;
        }
        throw new Refused(Refused.BAD, "This piece cannot be built as it stands.", "Put its text right first.");
    }

    /** Whether this browser wants a job in inches: as chosen, else as the piece is written. */
    static boolean isInch(Context ctx, JobPlan job) {
        String chosen =
                Optional.ofNullable(ctx.cookie(unitsCookie(job.job().id()))).orElse("");
        boolean own = job instanceof JobPlan.Planned planned
                && Sheets.format(true)
                        .equals(LengthFormat.of(
                                planned.plan().assembly().piece().unit()));
        return chosen.isEmpty() ? own : chosen.equals("in");
    }

    /** Whether this browser wants the shop's own pages in inches. */
    static boolean isInch(Context ctx) {
        return "in".equals(ctx.cookie(ShopActs.UNITS));
    }

    static String unitsCookie(String job) {
        return UNITS + job;
    }

    /** Takes an act for whoever asks; the page may name it, so that sending it twice does it once. */
    Answer take(Context ctx, Act act) {
        String named = Requests.field(ctx, "act", 60);
        String id =
                named.matches("[A-Za-z0-9-]{8,60}") ? named : UUID.randomUUID().toString();
        return told(store.take(new Sent(id, Visitor.of(ctx).id(), 0, act)));
    }

    /** Takes an act that must be taken. */
    Recorded mustTake(Context ctx, Act act) {
        return must(take(ctx, act));
    }

    /** Takes one of several acts of one request; the page names none of them. */
    void mustTakeToo(Context ctx, Act act) {
        must(told(store.take(
                new Sent(UUID.randomUUID().toString(), Visitor.of(ctx).id(), 0, act))));
    }

    /** Tells whoever looks at the job that something changed. */
    Answer told(Answer answer) {
        if (answer instanceof Answer.Taken taken) {
            changed.accept(taken.act().job());
        }
        return answer;
    }

    private static Recorded must(Answer answer) {
        if (answer instanceof Answer.Refused refused) {
            throw refusal(refused);
        }
        if (answer instanceof Answer.Taken taken) {
            return taken.act();
        }
        throw new Refused(
                Refused.CHANGED_MEANWHILE, "This was changed elsewhere meanwhile.", "Look at it again first.");
    }

    static Refused refusal(Answer.Refused refused) {
        StringBuilder text = new StringBuilder(refused.sentence());
        for (Problem problem : refused.problems()) {
            text.append(' ').append(problem.message());
        }
        String remedy = refused.remedy().isEmpty()
                ? refused.problems().stream()
                        .map(Problem::remedy)
                        .filter(each -> !each.isEmpty())
                        .findFirst()
                        .orElse("")
                : refused.remedy();
        return new Refused(Refused.BAD, text.toString(), remedy);
    }
}
