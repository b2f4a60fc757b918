package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import scantling.construct.Construction;
import scantling.piece.PieceEditor;
import scantling.piece.Woods;
import scantling.plan.StandardWoods;
import scantling.shop.JobPlan;
import scantling.web.Answers.Said;

/** Adding by asking: short forms that write into the text what a maker would have written there. */
final class AskPages {
    private static final int VALUE = 60;
    private static final Woods WOODS = StandardWoods.standard();
    private static final Pattern WORDS = Pattern.compile("[\\p{L}\\d .,/\"'()+*-]*");

    private final Doorway doorway;
    private final Answers answers;

    AskPages(Doorway doorway, Answers answers) {
        this.doorway = doorway;
        this.answers = answers;
    }

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}/ask", this::page);
        routes.post("/jobs/{job}/ask/drawer", ctx -> put(ctx, "a drawer", this::drawer));
        routes.post("/jobs/{job}/ask/drawers", ctx -> put(ctx, "drawers", this::drawers));
        routes.post("/jobs/{job}/ask/shelves", ctx -> put(ctx, "shelves", this::shelves));
        routes.post("/jobs/{job}/ask/split", ctx -> put(ctx, "what splits the opening", this::split));
        routes.post("/jobs/{job}/ask/size", ctx -> put(ctx, "other sizes over all", this::size));
        routes.post("/jobs/{job}/ask/material", ctx -> put(ctx, "another material", this::material));
        routes.post("/jobs/{job}/ask/top", ctx -> put(ctx, "the top", this::top));
    }

    private void page(Context ctx) {
        JobPlan job = doorway.job(ctx);
        String text = job.revision().text();
        List<PieceEditor.Given> givens = PieceEditor.givens(text, Construction.language());
        Map<String, Object> values = new HashMap<>();
        values.put("chrome", doorway.chrome(ctx, "Add or change", job, Doorway.isInch(ctx, job)));
        values.put("job", job.job().id());
        values.put("banks", TextAsk.banks(givens));
        values.put("places", TextAsk.places(text));
        values.put("materials", TextAsk.materials(givens));
        values.put("top", new TopText(text));
        values.put("sizes", new SizeText(text));
        values.put("solids", WOODS.solids());
        values.put("sheets", WOODS.sheets());
        doorway.show(ctx, "ask", values);
    }

    /** Writes what is asked into a text; nothing when there is no place for it. */
    private interface Writing {
        Optional<String> write(Context ctx, String text);
    }

    /** A short value that can mean nothing else in the text than what it says. */
    private static String said(Context ctx, String name) {
        String value = Requests.field(ctx, name, VALUE).strip();
        if (!WORDS.matcher(value).matches()) {
            throw new Refused(
                    Refused.BAD,
                    "\"%s\" cannot be written there.".formatted(Requests.shown(value)),
                    "Write a size such as 120 or 4 3/4, or a name of the text.");
        }
        return value;
    }

    private Optional<String> drawer(Context ctx, String text) {
        return TextAsk.withDrawer(text, Requests.field(ctx, "bank", Requests.LINE), said(ctx, "height"));
    }

    private Optional<String> drawers(Context ctx, String text) {
        String lap = said(ctx, "lap");
        String set = said(ctx, "set").equals("overlay")
                ? ", set: overlay" + (lap.isEmpty() ? "" : ", overlay: " + lap)
                : ", set: inset";
        String step = "drawers: {rows: %s, fronts: {of: %s%s}, box: {of: %s, floor: %s, runs on: %s}}"
                .formatted(
                        sizes(said(ctx, "rows")),
                        said(ctx, "fronts"),
                        set,
                        said(ctx, "box"),
                        said(ctx, "floor"),
                        said(ctx, "runs"));
        return TextAsk.withStep(text, Requests.number(ctx, "place"), step);
    }

    private Optional<String> shelves(Context ctx, String text) {
        String step = "shelves: {of: %s, count: %d, held: %s}"
                .formatted(
                        said(ctx, "of"),
                        Requests.number(ctx, "count"),
                        said(ctx, "held").isEmpty() ? "pins" : said(ctx, "held"));
        return TextAsk.withStep(text, Requests.number(ctx, "place"), step);
    }

    private Optional<String> split(Context ctx, String text) {
        String divider = said(ctx, "divider");
        String way = said(ctx, "way").equals("columns") ? "columns" : "rows";
        String step = "%s: {sizes: %s%s}"
                .formatted(way, sizes(said(ctx, "sizes")), divider.isEmpty() ? "" : ", divider: " + divider);
        return TextAsk.withStep(text, Requests.number(ctx, "place"), step);
    }

    /** {@code 3 equal} as it is; {@code 300, rest} as a list; a lone number of parts as equal ones. */
    static String sizes(String said) {
        if (said.matches("\\d{1,2}")) {
            return said + " equal";
        }
        return said.endsWith("equal") ? said : "[" + said + "]";
    }

    private Optional<String> size(Context ctx, String text) {
        SizeText sizes = new SizeText(text);
        for (SizeText.Field field : sizes.overAll()) {
            sizes = sizes.withOverAll(field.name(), said(ctx, field.name()));
        }
        return Optional.of(sizes.text());
    }

    private Optional<String> material(Context ctx, String text) {
        return Optional.of(new SizeText(text)
                .withMaterial(said(ctx, "name"), said(ctx, "of"), said(ctx, "thickness"))
                .text());
    }

    private Optional<String> top(Context ctx, String text) {
        String of = said(ctx, "of");
        Optional<String> written = topAsked(ctx, text);
        return written.flatMap(done -> new SizeText(done).withTopThickness(of, said(ctx, "thickness")));
    }

    private Optional<String> topAsked(Context ctx, String text) {
        TopText top = new TopText(text);
        String lipping = said(ctx, "lipping");
        String lipped = lipping.isEmpty() ? "" : "{with: %s}".formatted(lipping);
        String out = out(said(ctx, "front"), said(ctx, "back"), said(ctx, "ends"));
        if (!top.isThere()) {
            String step = "{of: %s%s%s}"
                    .formatted(
                            said(ctx, "of"),
                            lipped.isEmpty() ? "" : ", lipped: " + lipped,
                            out.isEmpty() ? "" : ", overhang: " + out);
            return top.added(step).map(TopText::text);
        }
        TopText changed = top.with("of", said(ctx, "of")).with(top.way(), out);
        boolean same = lipping.equals(top.lipping());
        return Optional.of((same ? changed : changed.with("lipped", lipped)).text());
    }

    private static String out(String front, String back, String ends) {
        List<String> sides = new ArrayList<>();
        Map.of("front", front, "back", back, "ends", ends).entrySet().stream()
                .sorted(Map.Entry.<String, String>comparingByKey().reversed())
                .filter(side -> !side.getValue().isEmpty())
                .forEach(side -> sides.add(side.getKey() + ": " + side.getValue()));
        return sides.isEmpty() ? "" : "{" + String.join(", ", sides) + "}";
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
        answers.changed(ctx, id, new Putting(doorway).put(ctx, job, text.get(), "asked for " + what));
    }
}
