package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.piece.Spelling;
import scantling.piece.Woods;
import scantling.plan.StandardWoods;
import scantling.shop.Act;
import scantling.shop.OnHand;
import scantling.stock.Board;
import scantling.stock.RoughClass;
import scantling.stock.Sheet;
import scantling.stock.Stick;
import scantling.stock.Stock;

/** The rack: what lies there, what comes in, and what goes out otherwise than through the saw. */
final class RackPages {
    private static final Woods WOODS = StandardWoods.standard();
    private static final int WORDS = 80;

    private final Doorway doorway;

    RackPages(Doorway doorway) {
        this.doorway = doorway;
    }

    void open(RoutesConfig routes) {
        routes.get("/rack", this::show);
        routes.post("/rack", this::put);
        routes.post("/rack/off", this::takeOff);
    }

    private void show(Context ctx) {
        doorway.show(
                ctx,
                "rack",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, "Rack"),
                        "pieces",
                        doorway.store().onHand(),
                        "solids",
                        WOODS.solids(),
                        "sheets",
                        WOODS.sheets(),
                        "classes",
                        RoughClass.all().stream().map(RoughClass::name).toList()));
    }

    private void put(Context ctx) {
        String kind = Requests.field(ctx, "kind", WORDS);
        Stock stock = switch (kind) {
            case "sheet" -> sheet(ctx);
            case "stick" ->
                new Stick(id(ctx), solid(ctx), size(ctx, "thickness"), size(ctx, "width"), size(ctx, "length"));
            default ->
                Board.rough(
                        id(ctx),
                        solid(ctx),
                        RoughClass.find(Requests.field(ctx, "class", WORDS))
                                .orElseThrow(() -> no("No such class of boards.", "Choose one of the list.")),
                        size(ctx, "width"),
                        size(ctx, "length"));
        };
        doorway.mustTake(
                ctx,
                new Act.PutOnRack(new OnHand(
                        stock,
                        Optional.empty(),
                        Requests.field(ctx, "place", WORDS).strip())));
        ctx.redirect("/rack", HttpStatus.SEE_OTHER);
    }

    private static Stock sheet(Context ctx) {
        Sheet.Grain grain = Requests.field(ctx, "grain", WORDS).equals("none") ? Sheet.Grain.NONE : Sheet.Grain.ALONG;
        return new Sheet(
                id(ctx),
                named(ctx, "sheet good", WOODS.findSheet(Requests.field(ctx, "material", WORDS)), WOODS.sheets()),
                size(ctx, "thickness"),
                Optional.empty(),
                size(ctx, "length"),
                size(ctx, "width"),
                grain);
    }

    private static String solid(Context ctx) {
        return named(ctx, "wood", WOODS.findSolid(Requests.field(ctx, "material", WORDS)), WOODS.solids());
    }

    private static String named(Context ctx, String what, Optional<String> found, List<String> known) {
        String said = Requests.field(ctx, "material", WORDS);
        return found.orElseThrow(
                () -> no("No %s is called \"%s\".".formatted(what, Requests.shown(said)), Spelling.maybe(said, known)));
    }

    private static String id(Context ctx) {
        String id = Requests.field(ctx, "id", WORDS).strip();
        if (id.isEmpty()) {
            throw no("It needs a name.", "Write on the wood what you call it here: C7.");
        }
        return id;
    }

    private static Length size(Context ctx, String name) {
        String said = Requests.field(ctx, name, WORDS).strip();
        return LengthReader.read(said, Unit.MM)
                .filter(Length::isPositive)
                .orElseThrow(() -> no(
                        "The %s \"%s\" is no size.".formatted(name, Requests.shown(said)),
                        "Write millimetres such as 2440, or inches such as 96 in."));
    }

    private static Refused no(String sentence, String remedy) {
        return new Refused(Refused.BAD, sentence, remedy.strip());
    }

    private void takeOff(Context ctx) {
        doorway.mustTake(
                ctx, new Act.TakeOffRack(Requests.field(ctx, "id", Requests.LINE), Requests.field(ctx, "why", WORDS)));
        ctx.redirect("/rack", HttpStatus.SEE_OTHER);
    }
}
