package scantling.finishing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import scantling.piece.Material;
import scantling.timber.Table;

/** What to mind at each step; words and sources in {@code finishing/safety.csv}. */
final class Cautions {
    private static final Table TABLE = Table.read("finishing/safety.csv");
    private static final Set<String> CONFIRMED = Set.of("oak", "beech");
    private static final Set<String> SUSPECTED = Set.of("birch", "mahogany", "teak", "walnut");

    private final Set<String> woods = new TreeSet<>();
    private final Optional<String> use;

    Cautions(List<Face> faces, Optional<String> use) {
        this.use = use;
        for (Face face : faces) {
            Wood.species(face.part()).ifPresent(woods::add);
            if (face.part().material().kind() == Material.Kind.SHEET) {
                woods.add(face.part().material().of());
            }
        }
    }

    List<Caution> of(Applied step, boolean bare, boolean sanded, boolean last) {
        List<Caution> all = new ArrayList<>();
        if (bare) {
            woodDust(all);
        } else if (sanded) {
            all.add(get("dust of coats"));
        }
        for (String hazard : step.coat().hazards()) {
            boolean mist = hazard.equals("mist");
            if (!hazard.equals("dust of coats") && (!mist || step.method().sprays())) {
                all.add(get(hazard));
            }
        }
        if (step.method().sprays() && step.coat().hazards().contains("flammable")) {
            all.add(get("spraying flammable"));
        }
        if (last) {
            use.map(Cautions::get).ifPresent(all::add);
            all.add(get("always"));
        }
        return all;
    }

    private void woodDust(List<Caution> all) {
        all.add(get("wood dust"));
        if (woods.contains("western red cedar")) {
            all.add(get("western red cedar"));
        }
        if (names(CONFIRMED)) {
            all.add(get("wood dust A1"));
        }
        if (names(SUSPECTED)) {
            all.add(get("wood dust A2"));
        }
    }

    private boolean names(Set<String> kinds) {
        return woods.stream()
                .anyMatch(wood -> List.of(wood.split("[\\s-]+", -1)).stream().anyMatch(kinds::contains));
    }

    private static Caution get(String when) {
        Table.Row row = TABLE.getRow("when", when);
        return new Caution(row.text("says"), row.source());
    }
}
