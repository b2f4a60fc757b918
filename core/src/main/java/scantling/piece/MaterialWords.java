package scantling.piece;

import java.util.Collections;
import java.util.Map;

/** What can be said about a material and in which sizes it is to be had, each key with its meaning. */
public final class MaterialWords {
    private MaterialWords() {}

    /**
     * The keys that may stand under a key.
     *
     * @param holder the key
     * @param material whether it is the name of a material
     * @return nothing when it is neither a material nor one of its lists
     */
    public static Map<String, String> inside(String holder, boolean material) {
        return switch (holder) {
            case "sheets" -> Collections.unmodifiableMap(SupplyReader.SHEETS);
            case "boards" -> Collections.unmodifiableMap(SupplyReader.BOARDS);
            default -> material ? Collections.unmodifiableMap(MaterialsReader.KEYS) : Map.of();
        };
    }
}
