package scantling.finishing;

import java.util.Optional;

/**
 * How far a coat goes. Coverage: m2 per litre = 1000 x volume solids x transfer / dry film in micrometres; thinned with R
 * parts of thinner to one, solids fall to VS / (1 + R). See docs/method/finishing.md.
 */
public final class Coverage {
    private static final double PERCENT = 0.01;

    private Coverage() {}

    /** Square metres that a litre covers. @param solids by volume, 0 to 1 @param transfer share that stays on the work @param dryMicrons film when dry */
    public static double squareMetresPerLitre(double solids, double transfer, double dryMicrons) {
        return Figures.of("coverage constant") * solids * transfer / dryMicrons;
    }

    /** The wet film that dries to a film so thick. @param thinned parts of thinner to one of the coat */
    public static double wetFilm(double dryMicrons, double solids, double thinned) {
        return dryMicrons * (1 + thinned) / solids;
    }

    /**
     * Square metres that a litre of a coat covers, put on in some way: as its sheet says, else by its solids. The bounds
     * join the bounds of what goes in as errors usually add, by the root of the squares of their shares.
     *
     * @param thinned parts of thinner to one of the coat
     */
    static Optional<Amount> spread(Coat coat, Method method, double thinned) {
        Optional<Amount> said = coat.find("spread");
        if (said.isPresent()) {
            return Optional.of(
                    spreadOf(said.get().likely() * method.transfer().likely(), said.get(), method.transfer()));
        }
        Optional<Amount> solids = coat.find("solids");
        Optional<Amount> dry = coat.find("dry film");
        if (solids.isEmpty() || dry.isEmpty()) {
            return Optional.empty();
        }
        double likely = squareMetresPerLitre(
                solids.get().likely() * PERCENT / (1 + thinned),
                method.transfer().likely(),
                dry.get().likely());
        return Optional.of(spreadOf(likely, solids.get(), dry.get(), method.transfer()));
    }

    private static Amount spreadOf(double likely, Amount... factors) {
        double squares = 0;
        for (Amount factor : factors) {
            double share = (factor.high() - factor.low()) / 2 / factor.likely();
            squares += share * share;
        }
        double share = Math.min(0.9, Math.sqrt(squares));
        return new Amount(likely * (1 - share), likely, likely * (1 + share));
    }

    /** Litres for an area: more where the spread is low; waste added. @param times more on a thirsty surface */
    static Amount litres(double squareMetres, Amount spread, double times) {
        double least = 1 + Figures.of("waste low") * PERCENT;
        double most = 1 + Figures.of("waste high") * PERCENT;
        double area = squareMetres * times;
        return new Amount(
                area / spread.high() * least, area / spread.likely() * (least + most) / 2, area / spread.low() * most);
    }
}
