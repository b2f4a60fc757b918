package scantling.packet;

import static scantling.packet.Json.each;
import static scantling.packet.Json.length;
import static scantling.packet.Json.lower;
import static scantling.packet.Json.object;
import static scantling.packet.Json.sizes;
import static scantling.packet.Json.texts;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;
import scantling.construct.Change;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.drawing.CutSheet;
import scantling.drawing.Origin;
import scantling.measure.Length;
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
        each(root, "features", content.features().features(), FeatureJson::feature);
        each(root, "choices", content.features().choices(), FeatureJson::choice);
        each(root, "supplies", content.features().fixings(), FeatureJson::fixing);
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

    /** A length of the cut plan, which has no sum of its own. */
    private static ObjectNode cut(Length length) {
        return object().put("mm", length.millimetres())
                .put("how", "by the cut plan")
                .put("from", Origin.WORKED.words());
    }
}
