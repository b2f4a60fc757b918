package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.piece.Problem;
import scantling.plan.Shop;
import scantling.plan.ShopReader;
import scantling.shop.Act;
import scantling.shop.Section;
import scantling.shop.Setting;
import scantling.shop.ShopDays;
import scantling.stock.Rack;

/** What the shop sets for itself: one text, with what counts beside it; every plan follows it. */
final class SettingsPages {
    private static final int VALUE = 60;
    private static final Set<String> LINES = Set.of("tools", "allowances", "sawing", "tolerances", "rates");

    private final Doorway doorway;
    private final Clock clock;

    SettingsPages(Doorway doorway, Clock clock) {
        this.doorway = doorway;
        this.clock = clock;
    }

    void open(RoutesConfig routes) {
        routes.get("/settings", ctx -> show(ctx, text(), List.of()));
        routes.post("/settings", this::put);
        routes.post("/settings/line", this::line);
    }

    private String text() {
        return doorway.store().settings().text();
    }

    private void show(Context ctx, String text, List<Problem> problems) {
        Shop shop = doorway.store().settings().shop(Rack.EMPTY);
        doorway.show(
                ctx,
                "settings",
                Map.of(
                        "lately",
                        ShopActs.lately(doorway),
                        "chrome",
                        doorway.chrome(ctx, "Settings"),
                        "text",
                        text,
                        "problems",
                        problems,
                        "view",
                        SettingsView.of(
                                shop,
                                text(),
                                ShopDays.calendar(doorway.store().settings(), clock.getZone()),
                                Sheets.format(Doorway.isInch(ctx)))));
    }

    private void put(Context ctx) {
        take(ctx, Requests.field(ctx, "text", Requests.TEXT).replace("\r\n", "\n"));
    }

    private void line(Context ctx) {
        String section = Requests.field(ctx, "section", Requests.LINE);
        String key = Requests.field(ctx, "key", VALUE).strip();
        String value = Requests.field(ctx, "value", VALUE).strip();
        if (!LINES.contains(section) || !key.matches("[\\p{L}\\d .'()/-]+") || !value.matches("[\\p{L}\\d .,%/-]+")) {
            throw new Refused(
                    Refused.BAD,
                    "\"%s: %s\" cannot be written there.".formatted(Requests.shown(key), Requests.shown(value)),
                    "Write a name and a value such as 3.2 mm, or write it in the text.");
        }
        // what is only shown in another unit is not written anew
        if (value.equals(Requests.field(ctx, "was", VALUE))) {
            ctx.redirect("/settings", HttpStatus.SEE_OTHER);
        } else {
            take(ctx, SettingsEdit.put(text(), section, key, value));
        }
    }

    /** All or nothing: a text with something wrong in it is shown again with what is wrong, and the old one counts. */
    private void take(Context ctx, String text) {
        List<Problem> problems = ShopReader.read(text, Rack.EMPTY).problems();
        if (problems.isEmpty()) {
            doorway.mustTake(ctx, new Act.Set(new Setting(Section.TEXT, Section.SHOP, text)));
            ctx.redirect("/settings", HttpStatus.SEE_OTHER);
        } else {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, text, problems);
        }
    }
}
