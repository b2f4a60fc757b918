package scantling.finishing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.piece.FinishText;
import scantling.piece.Problem;
import scantling.timber.Names;
import scantling.timber.Table;

/** The classes of coats that are known. */
public final class CoatTable {
    private static final CoatTable STANDARD = read();

    private final List<Coat> coats;
    private final Names<Coat> names;

    private CoatTable(List<Coat> coats) {
        this.coats = coats;
        this.names = Names.of(coats, coat -> Stream.concat(Stream.of(coat.name()), coat.aliases().stream()));
    }

    /** The program's own table. */
    public static CoatTable standard() {
        return STANDARD;
    }

    private static CoatTable read() {
        Table facts = Table.read("finishing/coat-facts.csv");
        return new CoatTable(Table.read("finishing/coats.csv").rows().stream()
                .map(row -> coat(row, facts))
                .toList());
    }

    private static Coat coat(Table.Row row, Table facts) {
        String name = row.text("coat");
        Map<String, Coat.Fact> known = new LinkedHashMap<>();
        facts.rows().stream().filter(fact -> fact.text("coat").equals(name)).forEach(fact -> {
            Amount amount = Amount.between(fact.number("low"), fact.number("high"));
            known.put(fact.text("fact"), new Coat.Fact(amount, fact.text("unit"), fact.source(), fact.verified()));
        });
        return new Coat(
                name,
                row.list("aliases"),
                row.text("role"),
                row.text("builds").equals("film"),
                row.text("binder"),
                row.text("solvent"),
                row.text("usual_method"),
                row.list("hazards"),
                known);
    }

    /** This table with the maker's own, which win over coats of the same name. */
    public CoatTable with(List<Coat> own) {
        List<String> taken = own.stream().map(Coat::name).toList();
        Stream<Coat> others = coats.stream().filter(coat -> !taken.contains(coat.name()));
        return new CoatTable(Stream.concat(others.map(coat -> without(coat, taken)), own.stream())
                .toList());
    }

    private static Coat without(Coat coat, List<String> taken) {
        return new Coat(
                coat.name(),
                coat.aliases().stream().filter(alias -> !taken.contains(alias)).toList(),
                coat.role(),
                coat.film(),
                coat.binder(),
                coat.solvent(),
                coat.method(),
                coat.hazards(),
                coat.facts());
    }

    /** What is wrong with coats that a shop says it has. */
    public static List<Problem> problems(List<FinishText.Own> own) {
        List<Problem> problems = new ArrayList<>();
        new OwnCoats(STANDARD, problems).with(own);
        return List.copyOf(problems);
    }

    /** All of them in the order of the table, the maker's own last. */
    public List<Coat> all() {
        return coats;
    }

    /** The coat that goes by this name. */
    public Optional<Coat> find(String name) {
        return names.find(name);
    }

    /** Up to three known names that come nearest. */
    public List<String> nearest(String name) {
        return names.nearest(name);
    }
}
