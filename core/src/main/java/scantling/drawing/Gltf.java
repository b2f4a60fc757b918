package scantling.drawing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.piece.Material;
import scantling.space.Axis;

/**
 * The piece as a scene of glTF 2.0 in one file: metres, y up, the front toward the viewer, one node to a part under its path,
 * one material to each of the piece's. Parts are drawn as they stand, without the work on them.
 */
public final class Gltf {
    private static final double METRES = 0.001;
    private static final int FLOAT = 5126;
    private static final int INDEX = 5125;
    private static final int VERTICES = 34962;
    private static final int INDICES = 34963;
    private static final int TRIANGLE = 3;
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final GeometryFactory PLANE = new GeometryFactory();

    private final ObjectNode root = JsonNodeFactory.instance.objectNode();
    private final ArrayNode nodes = root.arrayNode();
    private final ArrayNode meshes = root.arrayNode();
    private final ArrayNode views = root.arrayNode();
    private final ArrayNode accessors = root.arrayNode();
    private final List<byte[]> buffer = new ArrayList<>();
    private final Map<String, Integer> materials = new LinkedHashMap<>();
    private int bytes;

    private Gltf() {}

    /** Writes it as JSON with its buffer inside. */
    public static String of(Assembly assembly) {
        Gltf gltf = new Gltf();
        try {
            return MAPPER.writeValueAsString(gltf.scene(assembly));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A scene could not be written as JSON.", e);
        }
    }

    private ObjectNode scene(Assembly assembly) {
        root.putObject("asset").put("version", "2.0").put("generator", "Scantling");
        root.put("scene", 0);
        ObjectNode scene = root.putArray("scenes").addObject();
        scene.put("name", assembly.piece().title());
        ArrayNode children = scene.putArray("nodes");
        ArrayNode colours = root.arrayNode();
        for (Part part : assembly.parts()) {
            int material = materials.computeIfAbsent(part.material().name(), name -> {
                colours.add(material(part.material()));
                return colours.size() - 1;
            });
            children.add(nodes.size());
            nodes.addObject().put("name", part.path()).put("mesh", meshes.size());
            mesh(part, material);
        }
        root.set("nodes", nodes);
        root.set("meshes", meshes);
        root.set("materials", colours);
        root.set("accessors", accessors);
        root.set("bufferViews", views);
        root.putArray("buffers").addObject().put("byteLength", bytes).put("uri", data());
        return root;
    }

    /** Sawn timber is darker than sheet goods, so that one can tell them apart. */
    private static ObjectNode material(Material material) {
        double[] tint = switch (material.kind()) {
            case SOLID -> new double[] {0.62, 0.42, 0.26, 1};
            case SHEET -> new double[] {0.82, 0.70, 0.52, 1};
            case STICK -> new double[] {0.55, 0.36, 0.22, 1};
        };
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("name", material.name());
        ObjectNode surface = node.putObject("pbrMetallicRoughness");
        ArrayNode colour = surface.putArray("baseColorFactor");
        for (double each : tint) {
            colour.add(each);
        }
        surface.put("metallicFactor", 0).put("roughnessFactor", 0.7);
        return node;
    }

    private void mesh(Part part, int material) {
        List<float[]> corners = new ArrayList<>();
        List<float[]> normals = new ArrayList<>();
        for (List<Place> face : Solid.of(part).faces()) {
            float[] normal = unit(Solid.normal(face));
            for (Place corner : triangles(face)) {
                corners.add(metres(corner));
                normals.add(normal);
            }
        }
        ObjectNode mesh = meshes.addObject().put("name", part.path());
        ObjectNode primitive = mesh.putArray("primitives").addObject();
        ObjectNode attributes = primitive.putObject("attributes");
        attributes.put("POSITION", vectors(corners, true));
        attributes.put("NORMAL", vectors(normals, false));
        primitive.put("indices", indices(corners.size()));
        primitive.put("material", material);
    }

    /** Cuts a face into triangles, each turning the way the face turns. */
    private static List<Place> triangles(List<Place> face) {
        Place normal = Solid.normal(face);
        Axis flat = flattest(normal);
        Axis first = Axis.values()[(flat.ordinal() + 1) % TRIANGLE];
        Axis second = Axis.values()[(flat.ordinal() + 2) % TRIANGLE];
        Coordinate[] ring = new Coordinate[face.size() + 1];
        Map<Coordinate, Place> places = new LinkedHashMap<>();
        for (int i = 0; i <= face.size(); i++) {
            Place place = face.get(i % face.size());
            ring[i] = new Coordinate(place.on(first), place.on(second));
            places.putIfAbsent(ring[i], place);
        }
        Polygon polygon = PLANE.createPolygon(ring);
        Geometry cut = PolygonTriangulator.triangulate(polygon);
        List<Place> all = new ArrayList<>();
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            List<Place> triangle = Stream.of(cut.getGeometryN(i).getCoordinates())
                    .limit(TRIANGLE)
                    .map(corner -> places.getOrDefault(corner, face.get(0)))
                    .toList();
            boolean turned = Solid.normal(triangle).dot(normal) < 0;
            all.addAll(turned ? List.of(triangle.get(0), triangle.get(2), triangle.get(1)) : triangle);
        }
        return all;
    }

    private static Axis flattest(Place normal) {
        Axis flat = Axis.ACROSS;
        for (Axis axis : Axis.values()) {
            if (Math.abs(normal.on(axis)) > Math.abs(normal.on(flat))) {
                flat = axis;
            }
        }
        return flat;
    }

    /** From across, deep and up in millimetres to x right, y up and z toward the viewer in metres. */
    private static float[] metres(Place place) {
        return new float[] {
            (float) (place.across() * METRES), (float) (place.up() * METRES), (float) (-place.deep() * METRES)
        };
    }

    private static float[] unit(Place normal) {
        double length = Math.sqrt(normal.dot(normal));
        return new float[] {
            (float) (normal.across() / length), (float) (normal.up() / length), (float) (-normal.deep() / length)
        };
    }

    private int vectors(List<float[]> vectors, boolean withLimits) {
        ByteBuffer data =
                ByteBuffer.allocate(vectors.size() * TRIANGLE * Float.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        vectors.forEach(vector -> {
            for (float each : vector) {
                data.putFloat(each);
            }
        });
        ObjectNode accessor = accessor(data.array(), FLOAT, vectors.size(), "VEC3", VERTICES);
        if (withLimits) {
            limits(accessor.putArray("min"), vectors, true);
            limits(accessor.putArray("max"), vectors, false);
        }
        return accessors.size() - 1;
    }

    private static void limits(ArrayNode array, List<float[]> vectors, boolean least) {
        for (int i = 0; i < TRIANGLE; i++) {
            float limit = vectors.get(0)[i];
            for (float[] vector : vectors) {
                limit = least ? Math.min(limit, vector[i]) : Math.max(limit, vector[i]);
            }
            array.add(limit);
        }
    }

    private int indices(int count) {
        ByteBuffer data = ByteBuffer.allocate(count * Integer.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < count; i++) {
            data.putInt(i);
        }
        accessor(data.array(), INDEX, count, "SCALAR", INDICES);
        return accessors.size() - 1;
    }

    private ObjectNode accessor(byte[] data, int component, int count, String type, int target) {
        views.addObject()
                .put("buffer", 0)
                .put("byteOffset", bytes)
                .put("byteLength", data.length)
                .put("target", target);
        buffer.add(data);
        bytes += data.length;
        return accessors
                .addObject()
                .put("bufferView", views.size() - 1)
                .put("componentType", component)
                .put("count", count)
                .put("type", type);
    }

    private String data() {
        ByteBuffer whole = ByteBuffer.allocate(bytes);
        buffer.forEach(whole::put);
        return "data:application/octet-stream;base64," + Base64.getEncoder().encodeToString(whole.array());
    }
}
