package scantling.pricing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import scantling.construct.Part;
import scantling.measure.Ledger;
import scantling.measure.LengthFormat;
import scantling.piece.Piece;

/**
 * What a client gets and pays; nothing of how the price came about.
 *
 * @param title what it is
 * @param client for whom, where said
 * @param from who quotes, where the rates say so
 * @param gets what they get, sentences
 * @param price before tax
 * @param tax on it
 * @param toPay both
 * @param payments when it is paid
 * @param terms the rest, sentences
 * @param validDays days that it stands from the day it is given
 */
public record Quote(
        String title,
        Optional<String> client,
        Optional<String> from,
        List<String> gets,
        Money price,
        Money tax,
        Money toPay,
        List<Estimate.Payment> payments,
        List<String> terms,
        int validDays) {
    /** Takes its own copies. */
    public Quote {
        gets = List.copyOf(gets);
        payments = List.copyOf(payments);
        terms = List.copyOf(terms);
    }

    /** A quote from an estimate; nothing while the estimate has holes, for it would promise too little. */
    public static Optional<Quote> of(Basis basis, Estimate estimate, Rates rates) {
        if (!estimate.complete()) {
            return Optional.empty();
        }
        Piece piece = basis.assembly().piece();
        Estimate.Totals totals = estimate.totals();
        int days = (int) rates.number("valid");
        return Optional.of(new Quote(
                piece.title(),
                piece.client(),
                rates.word("from"),
                gets(basis, rates),
                totals.price(),
                totals.tax(),
                totals.toPay(),
                estimate.payments(),
                terms(days, rates),
                days));
    }

    private static List<String> terms(int days, Rates rates) {
        List<String> terms = new ArrayList<>(List.of(
                "This quote stands for %d days from its date.".formatted(days),
                "Wood is a natural material: colour and figure differ from board to board, and it moves with the"
                        + " seasons.",
                "Changes after the order are quoted by themselves before they are made."));
        rates.word("terms").ifPresent(terms::add);
        return terms;
    }

    private static List<String> gets(Basis basis, Rates rates) {
        Piece piece = basis.assembly().piece();
        LengthFormat format = LengthFormat.of(piece.unit());
        List<String> gets = new ArrayList<>();
        gets.add("%s wide, %s deep, %s high."
                .formatted(
                        format.formatWithUnit(piece.width().value()),
                        format.formatWithUnit(piece.depth().value()),
                        format.formatWithUnit(piece.height().value())));
        String woods = basis.assembly().parts().stream()
                .map(part -> part.material().of())
                .distinct()
                .collect(Collectors.joining(", "));
        gets.add("Made of %s.".formatted(woods));
        fronts(basis).ifPresent(gets::add);
        String coats =
                basis.finish().buy().stream().map(buy -> buy.coat().name()).collect(Collectors.joining(", "));
        if (!coats.isEmpty()) {
            gets.add("Finish: %s.".formatted(coats));
        }
        if (rates.number("delivery") > 0) {
            gets.add("Delivered.");
        }
        return gets;
    }

    /** Drawers and doors, counted by the names of their parts. */
    private static Optional<String> fronts(Basis basis) {
        Map<String, Long> counts = new TreeMap<>();
        for (String kind : List.of("drawer", "door")) {
            long count = basis.assembly().parts().stream()
                    .map(Part::path)
                    .flatMap(path -> holder(path, kind).stream())
                    .distinct()
                    .count();
            if (count > 0) {
                counts.put(kind, count);
            }
        }
        String words = counts.entrySet().stream()
                .map(one -> "%d %s%s".formatted(one.getValue(), one.getKey(), one.getValue() == 1 ? "" : "s"))
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? Optional.empty() : Optional.of("With " + words + ".");
    }

    private static Optional<String> holder(String path, String kind) {
        List<String> names = Ledger.names(path);
        return IntStream.range(0, names.size())
                .filter(i -> names.get(i).matches("(?:.* )?" + kind + "(?: \\d+)?"))
                .mapToObj(i -> String.join(Ledger.SEPARATOR, names.subList(0, i + 1)))
                .findFirst();
    }
}
