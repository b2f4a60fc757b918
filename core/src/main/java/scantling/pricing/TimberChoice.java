package scantling.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import scantling.checks.lasting.LastingChecks;
import scantling.checks.lasting.Moving;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.cutting.CutPiece;
import scantling.finishing.Finishing;
import scantling.finishing.Wood;
import scantling.measure.Length;
import scantling.piece.Material;
import scantling.stock.Board;
import scantling.stock.Rack;
import scantling.timber.Species;
import scantling.timber.SpeciesTable;

/**
 * Woods for one piece side by side: everything but the wood stays as it is, the boards that its saw plans buy too.
 *
 * @param wood the wood that is replaced
 * @param rows each wood that has a price or is on the rack, the cheapest first; those without a price last
 */
public record TimberChoice(String wood, List<Row> rows) {
    /** Takes its own copy. */
    public TimberChoice {
        rows = List.copyOf(rows);
    }

    /**
     * One wood.
     *
     * @param wood its name
     * @param timber what the boards cost
     * @param perPart the same for each finished part of it
     * @param movement of the part that moves most, from the driest to the dampest month
     * @param stiffness modulus of elasticity, GPa
     * @param hardness side hardness, N
     * @param kilograms weight of the whole piece
     * @param stain how it takes stain; common practice
     * @param finish what the finish of the piece asks of this wood, sentences
     * @param onRack board feet on the rack
     */
    public record Row(
            String wood,
            Optional<Money> timber,
            Optional<Money> perPart,
            Optional<Length> movement,
            OptionalDouble stiffness,
            OptionalDouble hardness,
            double kilograms,
            String stain,
            List<String> finish,
            double onRack) {
        /** Takes its own copy. */
        public Row {
            finish = List.copyOf(finish);
        }
    }

    /** Compares woods for a piece; nothing when none of its parts is solid. */
    public static Optional<TimberChoice> of(Basis basis, Rates rates, Rack rack) {
        return mainWood(basis.assembly()).map(wood -> {
            List<Row> rows = new ArrayList<>();
            for (String other : candidates(wood, rates, rack)) {
                SpeciesTable.standard()
                        .find(other)
                        .ifPresent(species -> rows.add(row(basis, wood, species, rates, rack)));
            }
            rows.sort(Comparator.comparing(
                            (Row row) -> row.timber().map(Money::amount),
                            Comparator.comparing((Optional<BigDecimal> sum) -> sum.isEmpty())
                                    .thenComparing(sum -> sum.orElse(BigDecimal.ZERO)))
                    .thenComparing(Row::wood));
            return new TimberChoice(wood, rows);
        });
    }

    /** The solid wood that most of the piece is made of. */
    private static Optional<String> mainWood(Assembly assembly) {
        Map<String, Double> volumes = new LinkedHashMap<>();
        for (Part part : assembly.parts()) {
            if (part.material().kind() == Material.Kind.SOLID) {
                double volume = part.length().value().toMetres()
                        * part.width().value().toMetres()
                        * part.thickness().value().toMetres();
                volumes.merge(part.material().of(), volume, Double::sum);
            }
        }
        return volumes.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private static Set<String> candidates(String wood, Rates rates, Rack rack) {
        Set<String> all = new LinkedHashSet<>(List.of(wood));
        all.addAll(rates.pricedWoods());
        all.addAll(rates.prices().keySet());
        rack.boards().forEach(board -> all.add(board.material()));
        return all;
    }

    private static Row row(Basis basis, String from, Species species, Rates rates, Rack rack) {
        String wood = species.name();
        Assembly assembly = of(basis.assembly(), from, wood);
        double feet = boardFeet(basis, from);
        long parts = basis.assembly().parts().stream()
                .filter(part -> isOf(part, from))
                .count();
        Optional<Money> timber = price(basis, from, wood, rates).map(each -> each.times(feet));
        return new Row(
                wood,
                timber,
                timber.map(sum -> sum.times(1.0 / parts)),
                LastingChecks.movements(assembly).stream()
                        .filter(moving -> isOf(moving.part(), wood))
                        .map(Moving::range)
                        .map(dim -> dim.value())
                        .max(Comparator.naturalOrder()),
                species.mechanics().elasticity(),
                species.mechanics().sideHardness(),
                Weight.of(assembly).kilograms(),
                Wood.find(wood).map(Wood::stain).orElse("not known"),
                finish(assembly, wood),
                rack.boards().stream()
                        .filter(board -> board.material().equals(wood))
                        .mapToDouble(Board::boardFeet)
                        .sum());
    }

    /** What is found of this wood under the finish as it is said. */
    private static List<String> finish(Assembly assembly, String wood) {
        return Finishing.plan(assembly).findings().stream()
                .filter(finding -> finding.sentence().contains(wood))
                .map(finding -> within(finding.sentence(), wood))
                .distinct()
                .toList();
    }

    /** A sentence about a wood, on a line that begins with its name. */
    private static String within(String sentence, String wood) {
        String rest =
                sentence.startsWith(wood) ? sentence.substring(wood.length()).strip() : sentence;
        return Character.toUpperCase(rest.charAt(0)) + rest.substring(1);
    }

    /** The wood of the piece costs what its text says, where it says so. */
    private static Optional<Money> price(Basis basis, String from, String wood, Rates rates) {
        Optional<Money> said = basis.sawn().stream()
                .map(Basis.Sawn::material)
                .filter(material -> wood.equals(from) && material.of().equals(from))
                .flatMap(material -> material.price().stream())
                .map(price -> Money.ofHundredths(price, rates.currency()))
                .findFirst();
        return said.or(() -> rates.price("timber", wood).map(Rates.Price::money));
    }

    private static double boardFeet(Basis basis, String wood) {
        double feet = 0;
        for (Basis.Sawn sawn : basis.sawn()) {
            if (sawn.material().kind() == Material.Kind.SOLID
                    && sawn.material().of().equals(wood)) {
                for (CutPiece piece : sawn.plan().used()) {
                    feet += Materials.boardFeet(sawn, piece.stock());
                }
            }
        }
        return feet;
    }

    private static boolean isOf(Part part, String wood) {
        return part.material().kind() == Material.Kind.SOLID
                && part.material().of().equals(wood);
    }

    /** The same assembly of another wood. */
    private static Assembly of(Assembly assembly, String from, String to) {
        return new Assembly(
                assembly.piece(),
                assembly.parts().stream()
                        .map(part -> isOf(part, from) ? of(part, to) : part)
                        .toList(),
                assembly.joints(),
                assembly.openings(),
                assembly.fittings(),
                assembly.names(),
                assembly.problems(),
                assembly.findings());
    }

    private static Part of(Part part, String wood) {
        Material other = part.material().ofWood(wood);
        return new Part(
                part.path(),
                other,
                part.length(),
                part.width(),
                part.thickness(),
                part.box(),
                part.lie(),
                part.outline(),
                part.turn(),
                part.shows(),
                part.fitted());
    }
}
