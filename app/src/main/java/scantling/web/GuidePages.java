package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** The guide for the maker, as part of the build carries it. */
final class GuidePages {
    private final Doorway doorway;
    private final AtomicReference<Optional<GuideBook>> book = new AtomicReference<>(Optional.empty());

    GuidePages(Doorway doorway) {
        this.doorway = doorway;
    }

    void open(RoutesConfig routes) {
        routes.get("/guide", ctx -> page(ctx, GuideBook.FIRST));
        routes.get("/guide/method/{page}", ctx -> page(ctx, "method/" + ctx.pathParam("page")));
        routes.get("/guide/{page}", ctx -> page(ctx, ctx.pathParam("page")));
    }

    private void page(Context ctx, String name) {
        GuideBook.Page page = book().find(name).orElseThrow(() -> Refused.noSuch("page of the guide"));
        doorway.show(
                ctx,
                "guide",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, page.title()),
                        "text",
                        page.markup(),
                        "isFirst",
                        name.equals(GuideBook.FIRST)));
    }

    /** Read when somebody first looks into it; two readers at once read the same. */
    private GuideBook book() {
        return book.updateAndGet(read -> read.isPresent() ? read : Optional.of(new GuideBook()))
                .orElseThrow();
    }
}
