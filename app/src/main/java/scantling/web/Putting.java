package scantling.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import scantling.plan.DesignChange;
import scantling.shop.Act;
import scantling.shop.Answer;
import scantling.shop.JobPlan;
import scantling.web.Answers.Said;

/**
 * Puts another text in: only one that can be built, and where something is sawn or cut already, only after what that would
 * cost in parts, money and days has been said and accepted.
 */
record Putting(Doorway doorway) {
    private static final double MINUTES = 60;

    /** @param words what is changed, for people */
    Said put(Context ctx, JobPlan job, String text, String words) {
        String id = job.job().id();
        JobPlan then = doorway.store().jobBook().tryOut(id, text).orElseThrow(() -> Refused.noSuch("job"));
        if (!Sheets.problems(then).isEmpty()) {
            return Said.refused("So it could not be built; nothing was changed.", "", Sheets.problems(then));
        }
        return weighed(ctx, job, text)
                .orElseGet(() -> said(
                        doorway.take(ctx, new Act.EditText(id, job.revision().number(), text, words)), words));
    }

    /** What is to be said and accepted first. */
    Optional<Said> weighed(Context ctx, JobPlan job, String text) {
        boolean touched = job instanceof JobPlan.Planned planned
                && !(planned.bench().cut().isEmpty() && planned.bench().sawn().isEmpty());
        if (!touched || !Requests.field(ctx, Weighed.ACCEPT, Requests.LINE).isEmpty()) {
            return Optional.empty();
        }
        Optional<DesignChange.Cost> cost =
                doorway.store().jobBook().costOf(job.job().id(), text).filter(Weighed::isWorthAsking);
        double day = MINUTES * doorway.store().settings().hoursADay();
        return cost.map(found -> new Said(
                "Some of it is sawn or cut already. This is what the change would cost.",
                "Nothing is changed yet.",
                List.of(),
                true,
                "",
                Weighed.of(ctx, found, day)));
    }

    static Said said(Answer answer, String words) {
        if (answer instanceof Answer.Taken taken) {
            return Said.done(words + ".", taken.act());
        }
        if (answer instanceof Answer.Refused refused) {
            return Said.refused(refused.sentence(), refused.remedy(), refused.problems());
        }
        return Said.refused(
                "The text was changed elsewhere at the same moment; nothing of yours was written.",
                "Look at what stands there now, then do it again.",
                List.of());
    }
}
