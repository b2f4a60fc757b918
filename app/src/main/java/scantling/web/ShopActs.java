package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.List;
import scantling.shop.Act;
import scantling.shop.Recorded;

/** What was done to the shop itself lately, the way back from each act, and in what the shop's pages show sizes. */
final class ShopActs {
    /** Name of the cookie that says in what a browser shows the sizes of the shop's own pages. */
    static final String UNITS = "units-of-the-shop";

    private static final int SHOWN = 10;
    private static final int LOOKED_AT = 400;
    private static final int YEAR = 365 * 24 * 3600;
    private static final List<String> PAGES = List.of("/rack", "/onhand", "/clients", "/settings");

    private final Doorway doorway;

    ShopActs(Doorway doorway) {
        this.doorway = doorway;
    }

    void open(RoutesConfig routes) {
        routes.post("/undo", ctx -> turn(ctx, true));
        routes.post("/redo", ctx -> turn(ctx, false));
        routes.post("/units", this::units);
    }

    /** The latest acts that concern no job, the last first. */
    static List<Recorded> lately(Doorway doorway) {
        return doorway.store().lastActs(LOOKED_AT).stream()
                .filter(act -> act.job().isEmpty() && Sheets.canBeTakenBack(act))
                .limit(SHOWN)
                .toList();
    }

    /** An act of the shop: what a job did is taken back on its sheet. */
    private void turn(Context ctx, boolean back) {
        String of = Requests.field(ctx, "of", Requests.LINE);
        if (doorway.store().lastActs(Integer.MAX_VALUE).stream()
                .noneMatch(act -> act.id().equals(of) && act.job().isEmpty())) {
            throw Refused.noSuch("act");
        }
        doorway.mustTake(ctx, back ? new Act.Undo(of) : new Act.Redo(of));
        ctx.redirect(page(ctx, PAGES, "/rack"), HttpStatus.SEE_OTHER);
    }

    private void units(Context ctx) {
        Cookie cookie =
                new Cookie(UNITS, Requests.field(ctx, "unit", Requests.LINE).equals("in") ? "in" : "mm");
        cookie.setMaxAge(YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        ctx.cookie(cookie);
        ctx.redirect(page(ctx, PAGES, "/"), HttpStatus.SEE_OTHER);
    }

    /** The page that it was asked from. */
    private static String page(Context ctx, List<String> pages, String usual) {
        String back = Requests.field(ctx, "back", Requests.LINE);
        return pages.contains(back) ? back : usual;
    }
}
