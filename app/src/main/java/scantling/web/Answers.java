package scantling.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.piece.Problem;
import scantling.shop.JobPlan;
import scantling.shop.Recorded;

/** What a job page is sent after something was asked or done: only the strands that changed, and one line of what happened. */
public final class Answers {
    private final Doorway doorway;
    private final Sheets sheets;

    Answers(Doorway doorway, Sheets sheets) {
        this.doorway = doorway;
        this.sheets = sheets;
    }

    /**
     * What a page says after an act.
     *
     * @param sentence what was done, or why it was not
     * @param remedy what to do; may be empty
     * @param problems in a text
     * @param refused whether nothing was written
     * @param undo id of the act that takes it back; empty when there is none
     * @param weighed what it would cost, when it waits for a yes
     */
    public record Said(
            String sentence, String remedy, List<Problem> problems, boolean refused, String undo, Weighed weighed) {
        /** Takes its own copy. */
        public Said {
            problems = List.copyOf(problems);
        }

        /** Whether there is nothing to say. */
        boolean isNothing() {
            return sentence.isEmpty() && problems.isEmpty();
        }

        static Said done(String sentence) {
            return new Said(sentence, "", List.of(), false, "", Weighed.NOTHING);
        }

        /** What an act did, with the way back. */
        static Said done(String sentence, Recorded act) {
            return new Said(sentence, "", List.of(), false, act.id(), Weighed.NOTHING);
        }

        static Said refused(String sentence, String remedy, List<Problem> problems) {
            return new Said(sentence, remedy, problems, true, "", Weighed.NOTHING);
        }
    }

    /** After an act: the job as it is now. Without a script the whole sheet is shown again. */
    void changed(Context ctx, String job, Said said) {
        JobPlan now = doorway.store().jobBook().planOf(job).orElseThrow(() -> Refused.noSuch("job"));
        if (!Requests.isPart(ctx)) {
            if (said.refused()) {
                ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
                doorway.show(
                        ctx, "refused", Map.of("chrome", doorway.chrome(ctx, "Not done", now, false), "said", said));
            } else {
                ctx.redirect("/jobs/" + job, HttpStatus.SEE_OTHER);
            }
            return;
        }
        ctx.html(parts(now, Doorway.isInch(ctx, now), Requests.field(ctx, "version", Requests.LINE), said));
    }

    /** What a page that shows an older sheet lacks. @param version of the sheet it shows */
    String parts(JobPlan now, boolean inch, String version, Said said) {
        Sheet sheet = sheets.of(now, inch);
        Optional<Sheet.Past> old = sheets.find(now.job().id(), inch, version).filter(sheet::sameStrands);
        StringBuilder out = new StringBuilder();
        if (!said.isNothing()) {
            out.append(
                    doorway.part("said", Map.of("said", said, "job", now.job().id())));
        }
        out.append(doorway.part(
                "at", Map.of("sheet", sheet, "revision", now.revision().number(), "instead", true)));
        if (old.isPresent()) {
            Map<String, Strand.Print> shown = old.get().prints();
            sheet.since(old.get())
                    .forEach((id, strand) -> out.append(strand.instead(id, shown.getOrDefault(id, Strand.NONE))));
        } else {
            out.append("<div id=\"sheet\" hx-swap-oob=\"innerHTML\">");
            sheet.strands().values().forEach(strand -> out.append(strand.markup()));
            out.append("</div>");
            out.append(doorway.part("contents", Map.of("sheet", sheet, "instead", true)));
        }
        return out.toString();
    }
}
