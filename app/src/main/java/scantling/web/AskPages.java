package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Construction;
import scantling.piece.PieceEditor;
import scantling.shop.JobPlan;
import scantling.web.Answers.Said;

/** Adding by asking: short forms that write into the text what a maker would have written there. */
final class AskPages {
    private static final int VALUE = 60;

    private final Doorway doorway;
    private final Answers answers;

    AskPages(Doorway doorway, Answers answers) {
        this.doorway = doorway;
        this.answers = answers;
    }

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}/ask", this::page);
        routes.post("/jobs/{job}/ask/drawer", ctx -> put(ctx, "a drawer", this::drawer));
        routes.post("/jobs/{job}/ask/shelves", ctx -> put(ctx, "shelves", this::shelves));
    }

    private void page(Context ctx) {
        JobPlan job = doorway.job(ctx);
        String text = job.revision().text();
        List<PieceEditor.Given> givens = PieceEditor.givens(text, Construction.language());
        doorway.show(
                ctx,
                "ask",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "Add or change", job, Doorway.isInch(ctx, job)),
                        "job",
                        job.job().id(),
                        "revision",
                        job.revision().number(),
                        "banks",
                        TextAsk.banks(givens),
                        "places",
                        TextAsk.places(text),
                        "materials",
                        TextAsk.materials(givens),
                        "top",
                        givens.stream()
                                .filter(given -> given.path().startsWith("top / ")
                                        || given.path().equals("top"))
                                .toList()));
    }

    /** Writes what is asked into a text; nothing when there is no place for it. */
    private interface Writing {
        Optional<String> write(Context ctx, String text);
    }

    private Optional<String> drawer(Context ctx, String text) {
        return TextAsk.withDrawer(
                text,
                Requests.field(ctx, "bank", Requests.LINE),
                Requests.field(ctx, "height", VALUE).strip());
    }

    private Optional<String> shelves(Context ctx, String text) {
        return TextAsk.withShelves(
                text,
                Requests.number(ctx, "place"),
                Requests.field(ctx, "of", VALUE).strip(),
                Requests.number(ctx, "count"));
    }

    private void put(Context ctx, String what, Writing writing) {
        JobPlan job = doorway.job(ctx);
        String id = job.job().id();
        Optional<String> text = writing.write(ctx, job.revision().text());
        if (text.isEmpty()) {
            answers.changed(
                    ctx, id, Said.refused("There is no place for " + what + " there.", "Write it by hand.", List.of()));
            return;
        }
        answers.changed(ctx, id, new Putting(doorway).put(ctx, job, text.get(), "added " + what));
    }
}
