package scantling.packet;

import static scantling.packet.Json.length;
import static scantling.packet.Json.object;
import static scantling.packet.Json.texts;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Fixing;
import scantling.feature.Range;

/** Holes, slots, rebates and moulded edges as JSON, with how each is set, why it is so, and what it is fixed with. */
final class FeatureJson {
    private FeatureJson() {}

    static void feature(ObjectNode node, Feature feature) {
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

    static void fixing(ObjectNode node, Fixing fixing) {
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

    static void choice(ObjectNode node, Features.Choice choice) {
        node.put("for", choice.owner()).put("sentence", choice.sentence());
        ArrayNode numbers = node.putArray("numbers");
        choice.numbers().forEach(number -> numbers.add(length(number)));
        node.put("source", choice.source());
    }
}
