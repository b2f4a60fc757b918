package scantling.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import scantling.drawing.Bodies;
import scantling.drawing.Drawing;
import scantling.drawing.Exploded;
import scantling.packet.Packet;
import scantling.shop.JobPlan;

/** The piece in the round, to be turned and drawn apart; a part leads to its place on the sheet. */
public final class RoundPages {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double TENTHS = 10;

    private final Doorway doorway;

    RoundPages(Doorway doorway) {
        this.doorway = doorway;
    }

    void open(RoutesConfig routes) {
        routes.get("/jobs/{job}/round", this::page);
        routes.get("/jobs/{job}/round.json", this::bodies);
    }

    private static Map<String, String> marks(JobPlan.Planned job) {
        Map<String, String> marks = new TreeMap<>();
        Packet.of(job.plan(), Sheets.format(false))
                .content()
                .groups()
                .forEach(group -> group.paths().forEach(path -> marks.put(path, group.mark())));
        return marks;
    }

    /** A part in the list beside the drawing. @param mark where it leads on the sheet */
    public record Listed(String mark, String path) {}

    private static List<Listed> parts(JobPlan.Planned job) {
        Map<String, String> marks = marks(job);
        return job.plan().assembly().parts().stream()
                .map(part -> new Listed(marks.getOrDefault(part.path(), ""), part.path()))
                .sorted(Comparator.comparing((Listed part) -> part.mark().length())
                        .thenComparing(Listed::mark)
                        .thenComparing(Listed::path))
                .toList();
    }

    private void page(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        List<String> flat = Exploded.all(job.plan().assembly(), marks(job)).stream()
                .map(Drawing::screenSvg)
                .toList();
        doorway.show(
                ctx,
                "round",
                Map.of(
                        "chrome",
                        doorway.chrome(ctx, job.job().title(), job, Doorway.isInch(ctx, job)),
                        "job",
                        job.job().id(),
                        "parts",
                        parts(job),
                        "flat",
                        flat));
    }

    private void bodies(Context ctx) {
        JobPlan.Planned job = doorway.planned(ctx);
        Map<String, String> marks = marks(job);
        ObjectNode all = JSON.createObjectNode();
        ArrayNode parts = all.putArray("parts");
        for (Bodies.Body body : Bodies.of(job.plan().assembly())) {
            ObjectNode part = parts.addObject();
            part.put("path", body.path());
            part.put("mark", marks.getOrDefault(body.path(), ""));
            ArrayNode faces = part.putArray("faces");
            for (List<Bodies.Corner> face : body.faces()) {
                ArrayNode corners = faces.addArray();
                face.forEach(corner ->
                        corners.add(tenths(corner.x())).add(tenths(corner.y())).add(tenths(corner.z())));
            }
        }
        ctx.contentType("application/json");
        ctx.result(all.toString());
    }

    private static double tenths(double mm) {
        return Math.round(mm * TENTHS) / TENTHS;
    }
}
