package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.construct.Construction;
import scantling.piece.PieceEditor;
import scantling.shop.JobPlan;
import scantling.shop.ShopStore;

/** A page that was only ever sent what changed is, to the letter, the page that a shop just opened would draw. */
final class KeptPageTest {
    private static final int EDITS = 24;
    private static final Pattern VERSION = Pattern.compile("data-version=\"([^\"]*)\" data-revision=\"(\\d+)\"");
    private static final Pattern PART =
            Pattern.compile("<(section|sheet-leaf) id=\"([^\"]*)\" hx-swap-oob=\"true\"(.*?)</\\1>", Pattern.DOTALL);
    private static final List<String> CHANGED =
            List.of("size / width", "size / depth", "size / height", "build / drawers / gap", "build / top / overhang");

    @TempDir
    Path folder;

    /** What a page shows, brought up to date as its script does it. */
    private static final class Shown {
        private String sheet;
        private String version = "";
        private String revision = "";
        private int whole;
        private int leaves;
        private int refused;

        Shown(String page) {
            int from = page.indexOf("<div id=\"sheet\">") + "<div id=\"sheet\">".length();
            sheet = page.substring(from, page.indexOf("</div>\n</main>", from));
            note(page);
        }

        void take(String answer) {
            if (answer.contains("class=\"no\"") && !answer.contains("data-version")) {
                refused++;
                return;
            }
            note(answer);
            Matcher part = PART.matcher(answer);
            while (part.find()) {
                whole += part.group(1).equals("section") ? 1 : 0;
                leaves += part.group(1).equals("section") ? 0 : 1;
                String head = "<" + part.group(1) + " id=\"" + part.group(2) + "\"";
                String end = "</" + part.group(1) + ">";
                int from = sheet.indexOf(head);
                assertTrue(from >= 0, "the page has no " + head);
                sheet = sheet.substring(0, from)
                        + head
                        + part.group(3)
                        + end
                        + sheet.substring(sheet.indexOf(end, from) + end.length());
            }
        }

        private void note(String markup) {
            Matcher found = VERSION.matcher(markup);
            assertTrue(found.find(), "it does not say which sheet it is");
            version = found.group(1);
            revision = found.group(2);
        }
    }

    @Test
    void aPageThatTookEveryChangeIsTheOneThatIsDrawnAnew() {
        SplittableRandom random = new SplittableRandom(7);
        String job;
        Shown own;
        Shown other;
        try (OpenShop shop = new OpenShop(folder, false)) {
            job = shop.job("bedside-chest");
            OpenShop.Browser desk = shop.desk();
            String stamp = desk.stamp("/jobs/" + job);
            own = new Shown(desk.get("/jobs/" + job).body());
            other = new Shown(desk.get("/jobs/" + job).body());
            String first = own.sheet;
            for (int edit = 0; edit < EDITS; edit++) {
                own.take(change(shop, desk, job, stamp, own, random).body());
                if (random.nextInt(3) == 0) {
                    other.take(since(desk, job, other));
                }
            }
            other.take(since(desk, job, other));
            assertNotEquals(first, own.sheet);
        }
        assertTrue(own.refused < EDITS / 3, own.refused + " refused");
        assertEquals(own.sheet, other.sheet);
        assertEquals(anew(job), own.sheet);
        assertTrue(own.leaves > own.whole, own.leaves + " leaves, " + own.whole + " strands");
    }

    private static String since(OpenShop.Browser desk, String job, Shown page) {
        return desk.get("/jobs/%s/since?version=%s".formatted(job, OpenShop.coded(page.version)), "HX-Request", "true")
                .body();
    }

    /** Another value, a measured size, or the last change taken back. */
    private static HttpResponse<String> change(
            OpenShop shop, OpenShop.Browser desk, String job, String stamp, Shown page, SplittableRandom random) {
        Map<String, String> shown = Map.of("stamp", stamp, "version", page.version, "revision", page.revision);
        String text = shop.store.text(job).orElseThrow().text();
        List<PieceEditor.Given> givens = PieceEditor.givens(text, Construction.language()).stream()
                .filter(given -> CHANGED.contains(given.path()) && given.value().matches("[0-9.]+"))
                .toList();
        int which = random.nextInt(5);
        if (which == 0) {
            String measured = "%d.%d".formatted(440 + random.nextInt(9), random.nextInt(10));
            return post(desk, job + "/measured", shown, Map.of("name", "drawer 1 / opening / width", "size", measured));
        }
        if (which == 1 && shop.store.text(job).orElseThrow().number() > 1) {
            String last = shop.store.lastActs(1).get(0).id();
            return post(desk, job + "/undo", shown, Map.of("of", last));
        }
        PieceEditor.Given given = givens.get(random.nextInt(givens.size()));
        long was = Math.round(Double.parseDouble(given.value()));
        String value = was + (was > 100 ? random.nextInt(-3, 4) : 0) + "." + random.nextInt(10);
        return post(desk, job + "/given", shown, Map.of("at", "" + given.span().start(), "value", value));
    }

    private static HttpResponse<String> post(
            OpenShop.Browser desk, String path, Map<String, String> shown, Map<String, String> fields) {
        Map<String, String> all = new HashMap<>(shown);
        all.putAll(fields);
        return desk.post("/jobs/" + path, all, "HX-Request", "true");
    }

    /** As a shop draws it that has drawn nothing before. */
    private String anew(String job) {
        try (ShopStore store = ShopStore.open(folder)) {
            JobPlan plan = store.jobBook().planOf(job).orElseThrow();
            Sheet sheet = new Sheets(store, new Pages(), found -> found.cuts(), "anew").of(plan, false);
            return sheet.strands().values().stream()
                    .map(strand -> strand.markup() + "\n")
                    .collect(Collectors.joining());
        }
    }

    @Test
    void aStrandIsSentWholeWhereMoreThanItsLeavesDiffer() {
        Strand before = Strand.of("<section id=\"parts\"><p>2</p>" + leaf("a", "1") + leaf("b", "1") + "</section>");
        Strand leaf = Strand.of("<section id=\"parts\"><p>2</p>" + leaf("a", "1") + leaf("b", "2") + "</section>");
        Strand frame = Strand.of("<section id=\"parts\"><p>3</p>" + leaf("a", "1") + leaf("b", "2") + "</section>");
        Strand fewer = Strand.of("<section id=\"parts\"><p>2</p>" + leaf("a", "1") + "</section>");
        assertEquals(
                "<sheet-leaf id=\"b\" hx-swap-oob=\"true\"><i>2</i></sheet-leaf>",
                leaf.instead("parts", before.print()));
        assertEquals(frame.instead("parts"), frame.instead("parts", before.print()));
        assertEquals(fewer.instead("parts"), fewer.instead("parts", before.print()));
        assertEquals("", before.instead("parts", before.print()));
        assertEquals(
                Optional.of("b"),
                leaf.print().leaves().keySet().stream().skip(1).findFirst());
    }

    private static String leaf(String id, String what) {
        return "<sheet-leaf id=\"%s\"><i>%s</i></sheet-leaf>".formatted(id, what);
    }
}
