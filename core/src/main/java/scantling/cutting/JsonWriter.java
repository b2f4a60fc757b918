package scantling.cutting;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import scantling.measure.Length;
import scantling.stock.Defect;

/** Writes jobs and plans as JSON; all lengths are exact decimal millimetres. */
final class JsonWriter {
    private JsonWriter() {}

    static ObjectNode job(CutJob job) {
        ObjectNode node = CutJson.object().put("unit", "mm");
        ObjectNode saw = node.putObject("saw");
        put(saw, "kerf", job.saw().kerf());
        put(saw, "trim", job.saw().trim());
        saw.put("stages", job.saw().stages()).put("firstCut", lower(job.saw().firstCut()));
        ObjectNode keep = node.putObject("keep");
        put(keep, "longer", job.keep().longer());
        put(keep, "shorter", job.keep().shorter());
        Wishes wishes = job.wishes();
        node.putObject("wishes")
                .put("setting", wishes.setting())
                .put("cut", wishes.cut())
                .put("offcut", wishes.offcut())
                .put("sizes", wishes.sizes())
                .put("nearEdge", wishes.nearEdge())
                .put("together", wishes.together());
        ArrayNode stock = node.putArray(kind(job));
        job.stock().forEach(s -> stock.add(stock(s)));
        ArrayNode parts = node.putArray("parts");
        for (CutPart part : job.parts()) {
            ObjectNode one = size(parts.addObject().put("name", part.name()), part.length(), part.width());
            one.put("count", part.count()).put("turn", part.turn());
            if (part.glued()) {
                one.put("glued", true);
            }
            if (!part.row().isEmpty()) {
                one.put("row", part.row());
            }
            if (!part.beside().isEmpty()) {
                one.put("beside", part.beside());
            }
        }
        return node;
    }

    private static String kind(CutJob job) {
        if (job.stock().isEmpty() || job.stock().get(0) instanceof Stock.SheetStock) {
            return "sheets";
        }
        return job.stock().get(0) instanceof Stock.BoardStock ? "boards" : "sticks";
    }

    private static ObjectNode stock(Stock stock) {
        ObjectNode node = size(CutJson.object().put("name", stock.name()), stock.length(), stock.width());
        stock.count().ifPresentOrElse(c -> node.put("count", c), () -> node.putNull("count"));
        node.put("cost", stock.cost());
        if (stock.trimmed()) {
            node.put("trimmed", true);
        }
        if (stock.onHand() || stock instanceof Stock.BoardStock) {
            node.put("onHand", stock.onHand());
        }
        if (!stock.defects().isEmpty()) {
            ArrayNode defects = node.putArray("defects");
            stock.defects().forEach(one -> defect(defects.addObject(), one));
        }
        return node;
    }

    private static void defect(ObjectNode node, Defect defect) {
        put(node, "from", defect.from());
        put(node, "to", defect.to());
        if (defect.edge() != Defect.Edge.WHOLE) {
            put(node.put("edge", lower(defect.edge())), "deep", defect.deep());
        }
    }

    static ObjectNode plan(CutJob job, CutPlan plan, double seconds) {
        ObjectNode node = CutJson.object();
        node.put("status", lower(plan.status())).put("cost", plan.cost());
        node.put("used", plan.used().size()).put("lowerBound", plan.lowerBound());
        node.put("gap", plan.gap()).put("seconds", seconds).put("unit", "mm");
        node.put("settings", plan.settings()).put("sawCuts", plan.cuts());
        ArrayNode pieces = node.putArray("pieces");
        plan.used().forEach(piece -> pieces.add(piece(job, piece)));
        ArrayNode leftOut = node.putArray("leftOut");
        for (CutPlan.LeftOut out : plan.leftOut()) {
            leftOut.addObject()
                    .put("part", job.parts().indexOf(out.part()))
                    .put("name", out.part().name())
                    .put("count", out.count())
                    .put("reason", out.reason());
        }
        node.set("job", job(job));
        return node;
    }

    private static ObjectNode piece(CutJob job, CutPiece piece) {
        ObjectNode node = CutJson.object();
        node.put("stock", job.stock().indexOf(piece.stock()))
                .put("name", piece.stock().name());
        node.put("number", piece.number());
        node.set("tree", tree(job, piece.tree()));
        node.set("parts", parts(job, piece.parts()));
        ArrayNode steps = node.putArray("cuts");
        for (CutStep step : piece.steps()) {
            ObjectNode one = steps.addObject().put("number", step.number()).put("piece", step.piece());
            put(one.put("direction", lower(step.direction())), "fence", step.fence());
            one.put("newSetting", step.newSetting()).put("first", step.first()).put("second", step.second());
        }
        return node;
    }

    private static ArrayNode parts(CutJob job, List<PlacedPart> parts) {
        ArrayNode list = CutJson.array();
        parts.forEach(p -> list.add(placed(job, p)));
        return list;
    }

    private static ObjectNode tree(CutJob job, CutTree tree) {
        ObjectNode node = CutJson.object();
        if (tree instanceof CutTree.Cut cut) {
            put(node.put("cut", lower(cut.direction())), "position", cut.position());
            node.set("first", tree(job, cut.first()));
            node.set("second", tree(job, cut.second()));
        } else if (tree instanceof CutTree.Part part) {
            return placed(job, part.placed());
        } else if (tree instanceof CutTree.Offcut offcut) {
            place(node, offcut.x(), offcut.y());
            size(node, offcut.length(), offcut.width()).put("keep", offcut.keep());
        }
        return node;
    }

    private static ObjectNode placed(CutJob job, PlacedPart placed) {
        ObjectNode node = CutJson.object();
        node.put("part", job.parts().indexOf(placed.part()))
                .put("name", placed.part().name())
                .put("copy", placed.copy());
        place(node, placed.x(), placed.y());
        return size(node, placed.length(), placed.width()).put("turned", placed.turned());
    }

    private static void place(ObjectNode node, Length x, Length y) {
        put(node, "x", x);
        put(node, "y", y);
    }

    private static ObjectNode size(ObjectNode node, Length length, Length width) {
        put(node, "length", length);
        put(node, "width", width);
        return node;
    }

    private static void put(ObjectNode node, String field, Length length) {
        node.put(field, length.millimetres());
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
