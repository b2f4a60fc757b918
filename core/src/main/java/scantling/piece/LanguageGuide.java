package scantling.piece;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** The language told from its shapes: every element with every field, what it means and an example. */
public final class LanguageGuide {
    private final StringBuilder text = new StringBuilder();

    private LanguageGuide() {}

    /** All elements, as Markdown. */
    public static String markdown(Language language) {
        LanguageGuide guide = new LanguageGuide();
        guide.line("# Elements of a piece");
        guide.line("");
        guide.line("Made from the program's own list of elements by a test. `name` may be said with every element.");
        guide.piece();
        language.elements().forEach(guide::element);
        return guide.text.toString();
    }

    /** What stands at the top of a description. */
    private void piece() {
        line("");
        line("## The piece itself");
        line("");
        line("| key | what it is |");
        line("| --- | --- |");
        PieceReader.KEYS.forEach((key, says) -> line("| `%s` | %s |".formatted(key, cell(says))));
        line("");
        line("Inside `home`, when it is not the name of a climate, and inside `shop`, with one number each:");
        line("");
        line("| key | what it is |");
        line("| --- | --- |");
        ConditionsReader.HOME_KEYS.forEach((key, says) -> line("| `%s` | %s |".formatted(key, cell(says))));
        materials();
    }

    private void materials() {
        line("");
        line("## A material");
        line("");
        line("Inside `materials`, under a name of your own. Sizes in stock are chosen from by what the plan then"
                + " costs:");
        keys(MaterialsReader.KEYS);
        line("");
        line("Each of its `sheets`:");
        keys(SupplyReader.SHEETS);
        line("");
        line("Each of its `boards`; which to buy is chosen, and those not named there are not bought:");
        keys(SupplyReader.BOARDS);
        line("");
        line("```yaml");
        line("materials:");
        line("  ply:");
        line("    sheet: birch plywood");
        line("    thickness: 18");
        line("    sheets:");
        line("      - {size: 4 x 8 ft, price: 88.00}");
        line("      - {size: 5 x 5 ft, price: 61.50, count: 3}");
        line("      - {name: from the last job, size: 1180 x 620, price: 0, count: 1, trimmed: yes}");
        line("  cherry:");
        line("    solid: black cherry");
        line("    thickness: 20");
        line("    boards:");
        line("      - {name: A, size: 2480 x 165, grade: FAS, price: 11.20}");
        line("      - {name: B, size: 3010 x 190, grade: 1C, price: 7.80, defects: [300 to 420, \"900 to 1100, 40"
                + " off the far edge\", 2900 to end]}");
        line("```");
    }

    /** All elements and what can be said of the finish, as Markdown. */
    public static String page(Language language) {
        LanguageGuide guide = new LanguageGuide();
        guide.text.append(markdown(language));
        guide.finish();
        return guide.text.toString();
    }

    private void finish() {
        line("");
        line("# Finish");
        line("");
        line("Under `finish:` every key is a step in the order it goes on, as in `top: waterborne lacquer x 3, brush,"
                + " thinned 10 %, after 72 h`, but for these:");
        keys(FinishReader.KEYS);
        line("");
        line("Inside a group, by its name; every other key is a step, and a group without steps stays bare:");
        keys(FinishReader.GROUP_KEYS);
        line("");
        line("```yaml");
        line("finish:");
        line("  seal: dewaxed shellac");
        line("  top: waterborne lacquer x 3");
        line("  air: 18 C, 55 %");
        line("  groups:");
        line("    box edges: {on: drawer box, faces: top edges, oil: oil x 2}");
        line("  coats:");
        line("    shop oil: {like: oil, spread: 14 to 18 m2/L, recoat after: 12 h}");
        line("```");
    }

    private void keys(Map<String, String> keys) {
        line("");
        line("| key | what it says |");
        line("| --- | --- |");
        keys.forEach((key, says) -> line("| `%s` | %s |".formatted(key, cell(says))));
    }

    private void element(Shape shape) {
        line("");
        line("## " + shape.key());
        line("");
        line(shape.says());
        shape.shortField()
                .ifPresent(field ->
                        line("Said shortly, as `%s: ...`, the value is its `%s`.".formatted(shape.key(), field)));
        fields(shape, new LinkedHashSet<>());
    }

    private void fields(Shape shape, Set<String> within) {
        line("");
        line("| field | what it is | when not said | example |");
        line("| --- | --- | --- | --- |");
        shape.fields().forEach(this::field);
        for (Field field : shape.fields()) {
            field.shape().filter(inner -> within.add(field.key())).ifPresent(inner -> {
                line("");
                line("Inside `%s`:".formatted(field.key()));
                fields(inner, within);
            });
        }
    }

    private void field(Field field) {
        String choices = field.choices().isEmpty() ? "" : " One of: " + String.join(", ", field.choices()) + ".";
        line("| `%s` | %s%s | %s | `%s` |"
                .formatted(field.key(), cell(field.says()), choices, cell(whenNotSaid(field)), cell(field.example())));
    }

    private static String whenNotSaid(Field field) {
        if (field.required()) {
            return "must be said";
        }
        String source = field.source().isEmpty() ? "" : " (" + field.source() + ")";
        return field.usual().map(usual -> usual + source).orElse("left out");
    }

    private static String cell(String words) {
        return words.replace("|", "\\|").replace("\n", " ");
    }

    private void line(String words) {
        text.append(words).append('\n');
    }
}
