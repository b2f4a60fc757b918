package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;
import scantling.piece.Spelling;
import scantling.piece.Woods;
import scantling.plan.StandardWoods;
import scantling.shop.Act;
import scantling.shop.OnHand;
import scantling.stock.Board;
import scantling.stock.Defect;
import scantling.stock.Grade;
import scantling.stock.Offcut;
import scantling.stock.RoughClass;
import scantling.stock.Sheet;
import scantling.stock.Stick;
import scantling.stock.Stock;

/** The rack: what lies there and where, what it cost, what comes in, and what goes out otherwise than through the saw. */
public final class RackPages {
    private static final Woods WOODS = StandardWoods.standard();
    private static final int WORDS = 80;

    private final Doorway doorway;

    RackPages(Doorway doorway) {
        this.doorway = doorway;
    }

    void open(RoutesConfig routes) {
        routes.get("/rack", this::show);
        routes.post("/rack", this::put);
        routes.post("/rack/change", this::change);
        routes.post("/rack/mark", this::mark);
        routes.post("/rack/off", this::takeOff);
    }

    /**
     * A piece as the page shows it.
     *
     * @param kind board, sheet, stick, or offcut and of what
     * @param price as a form shows it; empty for none
     * @param marks grade and defects of a board; empty for none
     * @param board whether it is one, or an offcut of one
     */
    public record Line(
            String id,
            String kind,
            String material,
            String length,
            String width,
            String thickness,
            String place,
            String price,
            String marks,
            boolean board) {
        static Line of(OnHand piece, LengthFormat format) {
            Stock stock = piece.stock();
            return new Line(
                    stock.id(),
                    stock instanceof Offcut offcut ? "offcut of " + offcut.cutFrom() : kind(stock),
                    stock.material(),
                    Nominal.of(stock.length(), format.inches()),
                    Nominal.of(stock.width(), format.inches()),
                    Nominal.of(stock.thickness(), format.inches()),
                    piece.place(),
                    Prices.written(piece.price()),
                    asBoard(stock).map(board -> marks(board, format)).orElse(""),
                    asBoard(stock).isPresent());
        }

        private static String marks(Board board, LengthFormat format) {
            return Stream.concat(
                            board.grade().map(Grade::name).stream(),
                            board.defects().stream().map(defect -> "not " + defect.words(format)))
                    .collect(Collectors.joining("; "));
        }

        private static String kind(Stock stock) {
            if (stock instanceof Board board) {
                return board.roughClass().name() + " board";
            }
            return stock instanceof Sheet ? "sheet" : "stick";
        }
    }

    private void show(Context ctx) {
        LengthFormat format = Sheets.format(Doorway.isInch(ctx));
        Map<String, Object> values = new HashMap<>();
        values.put("chrome", doorway.chrome(ctx, "Rack"));
        values.put(
                "pieces",
                doorway.store().onHand().stream()
                        .map(piece -> Line.of(piece, format))
                        .toList());
        values.put("solids", WOODS.solids());
        values.put("sheets", WOODS.sheets());
        values.put("grades", Grade.all().stream().map(Grade::name).toList());
        values.put("classes", RoughClass.all().stream().map(RoughClass::name).toList());
        values.put("lately", ShopActs.lately(doorway));
        doorway.show(ctx, "rack", values);
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
                                size(ctx, "length"))
                        .graded(grade(ctx))
                        .marked(defects(ctx));
        };
        doorway.mustTake(ctx, new Act.PutOnRack(new OnHand(stock, Prices.read(ctx, "price"), place(ctx))));
        ctx.redirect("/rack", HttpStatus.SEE_OTHER);
    }

    private static Optional<Board> asBoard(Stock stock) {
        Stock whole = stock instanceof Offcut offcut ? offcut.piece() : stock;
        return whole instanceof Board board ? Optional.of(board) : Optional.empty();
    }

    /** What was found on a board: its grade, and what no part may have. */
    private void mark(Context ctx) {
        OnHand piece = found(ctx);
        Board board = asBoard(piece.stock())
                .orElseThrow(() -> no("%s is no board.".formatted(piece.stock().id()), "Choose one of the boards."));
        Board marked = board.graded(grade(ctx)).marked(defects(ctx));
        Stock stock = piece.stock() instanceof Offcut offcut ? new Offcut(marked, offcut.cutFrom()) : marked;
        doorway.mustTake(ctx, new Act.ChangeOnRack(new OnHand(stock, piece.price(), piece.place())));
        ctx.redirect("/rack", HttpStatus.SEE_OTHER);
    }

    private OnHand found(Context ctx) {
        String id = Requests.field(ctx, "id", Requests.LINE);
        return doorway.store().onHand().stream()
                .filter(each -> each.stock().id().equals(id))
                .findFirst()
                .orElseThrow(() -> no("Nothing in the rack is called \"%s\".".formatted(Requests.shown(id)), ""));
    }

    private static Optional<Grade> grade(Context ctx) {
        return Grade.find(Requests.field(ctx, "grade", WORDS));
    }

    private static List<Defect> defects(Context ctx) {
        String said = Requests.field(ctx, "defects", Requests.LINE);
        return Defect.readAll(said, Doorway.isInch(ctx) ? Unit.INCH : Unit.MM)
                .orElseThrow(() -> no(
                        "\"%s\" are no defects.".formatted(Requests.shown(said)),
                        "Write from where to where, from the near end: 300 to 420; 900 to 1100, 40 off the far edge;"
                                + " 2300 to end."));
    }

    private static String place(Context ctx) {
        return Requests.field(ctx, "place", WORDS).strip();
    }

    /** Where a piece lies and what it cost; what it is does not change under its name. */
    private void change(Context ctx) {
        OnHand piece = found(ctx);
        doorway.mustTake(ctx, new Act.ChangeOnRack(new OnHand(piece.stock(), Prices.read(ctx, "price"), place(ctx))));
        ctx.redirect("/rack", HttpStatus.SEE_OTHER);
    }

    private static Stock sheet(Context ctx) {
        Sheet.Grain grain = Requests.field(ctx, "grain", WORDS).equals("none") ? Sheet.Grain.NONE : Sheet.Grain.ALONG;
        return new Sheet(
                id(ctx),
                named(ctx, "sheet good", WOODS.findSheet(Requests.field(ctx, "material", WORDS)), WOODS.sheets()),
                size(ctx, "thickness"),
                Requests.field(ctx, "measured", WORDS).isBlank()
                        ? Optional.empty()
                        : Optional.of(size(ctx, "measured")),
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

    /** A size in the unit that the page shows, unless it says its own. */
    private static Length size(Context ctx, String name) {
        String said = Requests.field(ctx, name, WORDS).strip();
        boolean inch = Doorway.isInch(ctx);
        return SizeField.read(
                said,
                inch,
                "The %s \"%s\" is no size.".formatted(name, Requests.shown(said)),
                inch
                        ? "Write inches such as 96 or 7 1/4, or millimetres such as 2440 mm."
                        : "Write millimetres such as 2440, or inches such as 96 in.");
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
