package scantling.packet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import scantling.construct.Change;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.drawing.CutSheet;
import scantling.drawing.Origin;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Fixing;
import scantling.feature.Range;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.space.Box;
import scantling.space.EndCut;
import scantling.space.Lie;
import scantling.space.Outline;
import scantling.space.Side;
import scantling.space.Turn;

/**
 * The plan as JSON for other programs: format {@code scantling-plan}, version 1, described in docs/plan-json.md and by
 * the schema {@code plan.schema.json}. Keys stand in a fixed order; lengths are exact millimetres with where they come
 * from.
 */
public final class PlanJson {
    /** The version it writes. */
    public static final int VERSION = 1;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final SumText SUMS = new SumText(LengthFormat.MM);

    private PlanJson() {}

    /** Writes it, indented. */
    public static String of(PacketContent content) {
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(plan(content));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A plan could not be written as JSON.", e);
        }
    }

    private static ObjectNode plan(PacketContent content) {
        ObjectNode root = object();
        root.put("format", "scantling-plan").put("version", VERSION);
        ObjectNode piece = root.putObject("piece");
        piece.put("title", content.assembly().piece().title());
        content.assembly().piece().client().ifPresent(client -> piece.put("client", client));
        piece.set("width", length(content.assembly().piece().width()));
        piece.set("depth", length(content.assembly().piece().depth()));
        piece.set("height", length(content.assembly().piece().height()));
        Map<String, String> marks = new TreeMap<>();
        content.groups().forEach(group -> group.paths().forEach(path -> marks.put(path, group.mark())));
        each(root, "parts", content.assembly().parts(), (node, part) -> part(node, part, marks));
        each(root, "joints", content.assembly().joints(), PlanJson::joint);
        each(root, "features", content.features().features(), PlanJson::feature);
        each(root, "choices", content.features().choices(), PlanJson::choice);
        each(root, "supplies", content.features().fixings(), PlanJson::fixing);
        each(root, "openings", content.assembly().openings(), PlanJson::opening);
        each(root, "fittings", content.assembly().fittings(), PlanJson::fitting);
        each(root, "blanks", content.blanks(), PlanJson::blank);
        each(root, "cutSheets", content.sheets(), PlanJson::cutSheet);
        RouteJson.write(root, content.route());
        each(root, "findings", content.findings(), PlanJson::finding);
        return root;
    }

    private static void part(ObjectNode node, Part part, Map<String, String> marks) {
        node.put("path", part.path()).put("mark", marks.getOrDefault(part.path(), ""));
        node.put("material", part.material().name()).put("of", part.material().of());
        node.set("length", length(part.length()));
        node.set("width", length(part.width()));
        node.set("thickness", length(part.thickness()));
        node.set("box", box(part.box()));
        Lie lie = part.lie();
        node.putObject("lie")
                .put("length", lower(lie.length()))
                .put("thickness", lower(lie.thickness()))
                .put("faceSide", lie.faceSide().word())
                .put("faceEdge", lie.faceEdge().word())
                .put("nearEnd", lie.nearEnd().word());
        part.outline().ifPresent(outline -> corners(node, "outline", outline));
        part.edgeOutline().ifPresent(outline -> corners(node, "edgeOutline", outline));
        if (!part.ends().areSquare()) {
            ObjectNode ends = node.putObject("ends");
            ends.set("near", end(part.ends().near()));
            ends.set("far", end(part.ends().far()));
        }
        part.turn().ifPresent(turn -> node.set("turn", turn(turn)));
        texts(node, "shows", part.shows().stream().sorted().map(Side::word).toList());
        node.put("fitted", part.fitted());
    }

    private static void corners(ObjectNode node, String name, Outline outline) {
        each(node, name, outline.corners(), (corner, at) -> {
            corner.set("along", length(at.along()));
            corner.set("across", length(at.across()));
        });
    }

    private static ObjectNode end(EndCut cut) {
        return object().put("mitreDegrees", cut.mitreDegrees()).put("tiltDegrees", cut.tiltDegrees());
    }

    private static ObjectNode turn(Turn turn) {
        ObjectNode node = object().put("about", lower(turn.about())).put("degrees", turn.degrees());
        node.set("first", length(turn.first()));
        node.set("second", length(turn.second()));
        turn.then().ifPresent(then -> node.set("then", turn(then)));
        return node;
    }

    private static void joint(ObjectNode node, Joint joint) {
        node.put("path", joint.path()).put("kind", joint.kind().words());
        node.put("entering", joint.entering()).put("receiving", joint.receiving());
        joint.overlap().ifPresent(overlap -> node.set("overlap", box(overlap)));
        node.set("sizes", sizes(joint.sizes()));
    }

    private static void feature(ObjectNode node, Feature feature) {
        node.put("path", feature.path()).put("part", feature.part()).put("for", feature.owner());
        node.put("kind", feature.kind().words())
                .put("surface", feature.surface().words());
        node.set("along", range(feature.along()));
        node.set("across", range(feature.across()));
        node.set("through", range(feature.through()));
        feature.radius().ifPresent(radius -> node.set("radius", length(radius)));
        feature.taper().ifPresent(taper -> {
            ObjectNode slope =
                    node.putObject("taper").put("narrow", taper.narrow().words());
            slope.set("nearer", length(taper.nearer()));
            slope.set("farther", length(taper.farther()));
        });
        feature.aim().ifPresent(aim -> aim(node.putObject("aim"), aim, feature));
        ObjectNode setting = node.putObject("setting");
        setting.put("machine", feature.setting().machine())
                .put("tool", feature.setting().tool());
        ObjectNode dialled = setting.putObject("sizes");
        feature.setting().sizes().forEach((name, dim) -> dialled.set(name, length(dim)));
        if (!feature.setting().angles().isEmpty()) {
            ObjectNode tilted = setting.putObject("angles");
            feature.setting().angles().forEach((name, angle) -> tilted.put(name, Math.round(angle * 100) / 100.0));
        }
        texts(setting, "notes", feature.setting().notes());
    }

    private static void aim(ObjectNode node, Aim aim, Feature feature) {
        node.set("along", length(aim.along()));
        node.set("across", length(aim.across()));
        node.set("through", length(aim.through()));
        node.set("depth", length(aim.depth()));
        node.set("length", length(aim.length()));
        node.set("width", length(aim.width()));
        node.set("way", way(aim.way()));
        node.set("side", way(aim.side()));
        ArrayNode leans = node.putArray("leans");
        for (double degrees : aim.leans(feature.surface())) {
            leans.add(hundredths(degrees));
        }
        node.put("turned", hundredths(aim.turned(feature.surface())));
    }

    private static ArrayNode way(Aim.Way way) {
        ArrayNode node = object().arrayNode();
        for (double share : new double[] {way.along(), way.across(), way.through()}) {
            node.add(Math.round(share * 1e9) / 1e9);
        }
        return node;
    }

    private static double hundredths(double degrees) {
        return Math.round(degrees * 100) / 100.0;
    }

    private static void fixing(ObjectNode node, Fixing fixing) {
        node.put("for", fixing.owner())
                .put("what", fixing.what())
                .put("size", fixing.size())
                .put("count", fixing.count());
    }

    private static ObjectNode range(Range range) {
        ObjectNode node = object();
        node.set("from", length(range.from()));
        node.set("to", length(range.to()));
        return node;
    }

    private static void choice(ObjectNode node, Features.Choice choice) {
        node.put("for", choice.owner()).put("sentence", choice.sentence());
        ArrayNode numbers = node.putArray("numbers");
        choice.numbers().forEach(number -> numbers.add(length(number)));
        node.put("source", choice.source());
    }

    private static void opening(ObjectNode node, Opening opening) {
        node.put("path", opening.path());
        node.set("width", length(opening.width()));
        node.set("depth", length(opening.depth()));
        node.set("height", length(opening.height()));
        node.set("box", box(opening.box()));
        texts(node, "fills", opening.fills());
    }

    private static void fitting(ObjectNode node, Fitting fitting) {
        node.put("path", fitting.path()).put("what", fitting.what());
        node.put("count", fitting.count()).put("per", fitting.per());
        texts(node, "on", fitting.on());
        node.set("sizes", sizes(fitting.sizes()));
    }

    private static void blank(ObjectNode node, BlankRow blank) {
        node.put("mark", blank.mark()).put("count", blank.count());
        node.set("length", length(blank.length()));
        node.set("width", length(blank.width()));
        node.set("thickness", length(blank.thickness()));
        node.put("kind", blank.kind()).put("how", blank.how());
    }

    private static void cutSheet(ObjectNode node, CutSheet sheet) {
        node.put("title", sheet.title());
        node.set("length", cut(sheet.length()));
        node.set("width", cut(sheet.width()));
        each(node, "pieces", sheet.pieces(), PlanJson::placed);
        each(node, "offcuts", sheet.offcuts(), PlanJson::placed);
        each(node, "cuts", sheet.cuts(), (made, cut) -> {
            made.put("order", cut.order());
            made.set("from", point(cut.from()));
            made.set("to", point(cut.to()));
            made.set("fence", cut(cut.fence()));
        });
        node.put("note", sheet.note());
    }

    private static void placed(ObjectNode node, CutSheet.Placed placed) {
        node.put("label", placed.label());
        node.set("x", cut(placed.x()));
        node.set("y", cut(placed.y()));
        node.set("length", cut(placed.length()));
        node.set("width", cut(placed.width()));
    }

    private static ObjectNode point(CutSheet.Point point) {
        ObjectNode node = object();
        node.set("x", cut(point.x()));
        node.set("y", cut(point.y()));
        return node;
    }

    private static void finding(ObjectNode node, Finding finding) {
        node.put("severity", lower(finding.severity())).put("subject", finding.subject());
        node.put("sentence", finding.sentence());
        ArrayNode numbers = node.putArray("numbers");
        finding.numbers().forEach(number -> numbers.add(length(number)));
        node.put("source", finding.source()).put("remedy", finding.remedy());
        node.put("name", finding.name());
        each(node, "changes", finding.changes(), PlanJson::change);
    }

    private static void change(ObjectNode node, Change change) {
        node.put("words", change.words()).put("from", change.span().start());
        node.put("to", change.span().end()).put("text", change.replacement());
    }

    private static ObjectNode box(Box box) {
        ObjectNode node = object();
        for (Side side : Side.values()) {
            node.set(side.word(), length(box.plane(side)));
        }
        return node;
    }

    private static ObjectNode sizes(Map<String, Dim> sizes) {
        ObjectNode node = object();
        new TreeMap<>(sizes).forEach((name, dim) -> node.set(name, length(dim)));
        return node;
    }

    private static ObjectNode length(Dim dim) {
        ObjectNode node = object().put("mm", dim.value().millimetres());
        dim.findPath().ifPresent(path -> node.put("path", path));
        return node.put("how", SUMS.of(dim)).put("from", Origin.of(dim).words());
    }

    /** A length of the cut plan, which has no sum of its own. */
    private static ObjectNode cut(Length length) {
        return object().put("mm", length.millimetres())
                .put("how", "by the cut plan")
                .put("from", Origin.WORKED.words());
    }

    private static <T> void each(ObjectNode node, String key, List<T> all, BiConsumer<ObjectNode, T> write) {
        ArrayNode array = node.putArray(key);
        all.forEach(one -> write.accept(array.addObject(), one));
    }

    private static void texts(ObjectNode node, String key, List<String> texts) {
        ArrayNode array = node.putArray(key);
        texts.forEach(array::add);
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
