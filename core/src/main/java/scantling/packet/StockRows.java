package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.piece.Material;

/** The parts of one material. @param heading the material @param groups its parts */
public record StockRows(String heading, List<PartGroup> groups) {
    /** Takes its own copy. */
    public StockRows {
        groups = List.copyOf(groups);
    }

    /** Parts by material, in the order of their marks. */
    static List<StockRows> of(List<PartGroup> groups) {
        Map<String, List<PartGroup>> rows = new LinkedHashMap<>();
        for (PartGroup group : groups) {
            Material material = group.sample().material();
            String of =
                    material.of().equals(material.name()) ? material.name() : material.name() + ", " + material.of();
            rows.computeIfAbsent(of, key -> new ArrayList<>()).add(group);
        }
        return rows.entrySet().stream()
                .map(entry -> new StockRows(entry.getKey(), entry.getValue()))
                .toList();
    }
}
