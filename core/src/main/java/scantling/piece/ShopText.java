package scantling.piece;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a shop says of itself, in words: what the words of a section mean is for the room that knows it.
 *
 * @param sections plain settings, by the key they stand under: allowances, rates, times ...
 * @param calendar when it works and what it has only so much of, where said
 * @param home the air that pieces go to where their own text says nothing
 * @param coats coats of its own
 */
public record ShopText(
        Map<String, List<SettingsText.Entry>> sections,
        Optional<Workshop> calendar,
        Optional<Conditions.Home> home,
        List<FinishText.Own> coats) {
    /** Nothing is said: all as usual. */
    public static final ShopText NONE = new ShopText(Map.of(), Optional.empty(), Optional.empty(), List.of());

    /** Takes its own copies. */
    public ShopText {
        sections = Map.copyOf(sections);
        coats = List.copyOf(coats);
    }

    /** What stands under a key, in the order of the text. */
    public List<SettingsText.Entry> section(String key) {
        return sections.getOrDefault(key, List.of());
    }

    /** The keys of plain settings and what stands under each. */
    static Map<String, String> keys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("allowances", "What is added before milling, kerfs, trims, least offcuts.");
        keys.put("sawing", "First cut and stages, and what counts after money: settings, cuts, offcuts kept whole.");
        keys.put("tolerances", "How far off each process may come out, either way.");
        keys.put("tools", "Tools of your own and the width of their cut.");
        keys.put("joints", "Rules of thumb that joints are chosen by.");
        keys.put("hardware", "Sizes of slides, hinges and fittings, by profile.");
        keys.put("rates", "What is charged, and how a price is made.");
        keys.put("times", "Minutes of hands for one unit of work.");
        keys.put("set-ups", "Minutes before the first unit of work.");
        return keys;
    }
}
