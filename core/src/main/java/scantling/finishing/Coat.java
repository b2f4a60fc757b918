package scantling.finishing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A class of product that is put on wood; never a brand.
 *
 * @param name as makers say it: waterborne lacquer
 * @param aliases other names
 * @param role what it is for: stain, sealer, filler, primer, top, wax
 * @param film whether it builds a film; else it goes into the wood
 * @param binder what stays: oil, shellac, water (acrylics and the like), nitrocellulose, catalysed ...
 * @param solvent what leaves it and thins it
 * @param method how it is usually put on
 * @param hazards keys of the safety table
 * @param facts what is known of it, by the names of the facts table
 */
public record Coat(
        String name,
        List<String> aliases,
        String role,
        boolean film,
        String binder,
        String solvent,
        String method,
        List<String> hazards,
        Map<String, Fact> facts) {
    /** One number known of a coat. @param amount in its unit @param source who says so @param verified yes, partial, memory or no */
    public record Fact(Amount amount, String unit, String source, String verified) {}

    /** Takes its own copies. */
    public Coat {
        aliases = List.copyOf(aliases);
        hazards = List.copyOf(hazards);
        facts = Map.copyOf(facts);
    }

    /** The number known under this name. */
    public Optional<Amount> find(String fact) {
        return Optional.ofNullable(facts.get(fact)).map(Fact::amount);
    }

    /** Who says so; empty when nothing is known. */
    public String sourceOf(String fact) {
        return Optional.ofNullable(facts.get(fact)).map(Fact::source).orElse("");
    }

    /** The same under another name, with other facts and words where given. */
    Coat with(String own, Map<String, String> words, Map<String, Fact> others) {
        Map<String, Fact> all = new LinkedHashMap<>(facts);
        all.putAll(others);
        return new Coat(
                own,
                List.of(),
                words.getOrDefault("role", role),
                words.getOrDefault("builds", film ? "film" : "penetrating").equals("film"),
                words.getOrDefault("binder", binder),
                words.getOrDefault("solvent", solvent),
                method,
                hazards,
                all);
    }

    /** Whether it thins with water. */
    boolean isWaterborne() {
        return solvent.equals("water");
    }
}
