package scantling.packet.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.drawing.Gltf;
import scantling.packet.PacketContent;
import scantling.packet.PartGroup;
import scantling.packet.Shelf;

/**
 * Files for other programs, read back by readers that are not ours: the Khronos validator for glTF 2.0 and a DXF reader, both
 * from the npm registry; where they are not installed the tests say so and are skipped.
 */
class OpenFormatsTest {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final PacketContent CONTENT = Shelf.content();

    @TempDir
    Path folder;

    private static Path readers() {
        return Path.of(System.getProperty("scantling.root", "."), "target", "readers");
    }

    private String node(String script, Path file) throws IOException, InterruptedException {
        Path readers = readers();
        if (!Files.isDirectory(readers.resolve("node_modules"))) {
            System.out.println(
                    "Skipped: readers of other formats are not installed; ./check installs them where npm is.");
        }
        Assumptions.assumeTrue(Files.isDirectory(readers.resolve("node_modules")));
        Process process = new ProcessBuilder("node", "-e", script, file.toString())
                .directory(readers.toFile())
                .redirectErrorStream(true)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), out);
        return out;
    }

    @Test
    void theSceneHasNoErrorsForTheValidatorOfItsStandard() throws Exception {
        Path file = Files.writeString(folder.resolve("piece.gltf"), Gltf.of(CONTENT.assembly()));
        String out = node(
                "require('gltf-validator').validateBytes(new Uint8Array(require('fs').readFileSync(process.argv[1])))"
                        + ".then(r=>console.log(JSON.stringify({e:r.issues.numErrors,w:r.issues.numWarnings,"
                        + "n:r.info.drawCallCount})))",
                file);
        JsonNode report = MAPPER.readTree(out);
        assertEquals(0, report.get("e").asInt(), out);
        assertEquals(0, report.get("w").asInt(), out);
        assertEquals(5, report.get("n").asInt(), out);
    }

    @Test
    void theSceneHoldsAsMuchWoodAsAHandWorksOut() throws Exception {
        // By hand, in cubic millimetres: two ends 18 x 200 x 600, two shelves 776 x 200 x 18, a rail 764 x 60 x 18.
        double byHand = 2 * 18.0 * 200 * 600 + 2 * 776.0 * 200 * 18 + 764.0 * 60 * 18;
        double metres = volume(MAPPER.readTree(Gltf.of(CONTENT.assembly())));
        assertEquals(byHand * 1e-9, metres, 1e-7);
    }

    /** Signed tetrahedra from the origin under each triangle. */
    private static double volume(JsonNode scene) {
        String uri = scene.get("buffers").get(0).get("uri").asText();
        ByteBuffer data = ByteBuffer.wrap(Base64.getDecoder().decode(uri.substring(uri.indexOf(',') + 1)))
                .order(ByteOrder.LITTLE_ENDIAN);
        double six = 0;
        for (JsonNode mesh : scene.get("meshes")) {
            JsonNode accessor = scene.get("accessors")
                    .get(mesh.get("primitives")
                            .get(0)
                            .get("attributes")
                            .get("POSITION")
                            .asInt());
            int at = scene.get("bufferViews")
                    .get(accessor.get("bufferView").asInt())
                    .get("byteOffset")
                    .asInt();
            for (int triangle = 0; triangle < accessor.get("count").asInt() / 3; triangle++) {
                double[] c = new double[9];
                for (int i = 0; i < c.length; i++) {
                    c[i] = data.getFloat(at + (triangle * c.length + i) * Float.BYTES);
                }
                six += c[0] * (c[4] * c[8] - c[5] * c[7])
                        - c[1] * (c[3] * c[8] - c[5] * c[6])
                        + c[2] * (c[3] * c[7] - c[4] * c[6]);
            }
        }
        return six / 6;
    }

    @Test
    void anotherReaderFindsOutlineAndHolesOnTheirLayers() throws Exception {
        PartGroup rail = CONTENT.groups().get(3);
        Path file = Files.writeString(folder.resolve("C.dxf"), PartDxf.of(rail.sample(), rail.work()));
        String out = node(
                "const D=require('dxf-parser');const d=new (D.default||D)().parseSync("
                        + "require('fs').readFileSync(process.argv[1],'utf8'));console.log(JSON.stringify(d.entities"
                        + ".map(e=>e.type+' '+e.layer+' '+(e.center?[e.center.x,e.center.y,e.radius]:e.vertices"
                        + ".map(v=>[v.x,v.y].join(' '))).toString())))",
                file);
        List<String> entities = new ArrayList<>();
        MAPPER.readTree(out).forEach(entity -> entities.add(entity.asText()));
        assertEquals(
                List.of(
                        "POLYLINE OUTLINE 0 0,764 0,764 60,0 60",
                        "CIRCLE DRILL_5_DEEP_18 60,30,2.5",
                        "CIRCLE DRILL_5_DEEP_18 716,30,2.5"),
                entities);
    }

    @Test
    void aDadoIsALoopOnALayerThatSaysItsDepth() {
        PartGroup end = CONTENT.groups().get(0);
        String dxf = PartDxf.of(end.sample(), end.work());
        assertTrue(dxf.contains("DADO_DEEP_6\r\n"), dxf);
        assertTrue(dxf.startsWith("0\r\nSECTION\r\n2\r\nHEADER\r\n9\r\n$ACADVER\r\n1\r\nAC1009\r\n"), dxf);
        assertTrue(dxf.endsWith("0\r\nEOF\r\n"), dxf);
    }
}
