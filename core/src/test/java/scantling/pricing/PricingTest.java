package scantling.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.cutting.Effort;
import scantling.finishing.Amount;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.plan.Costing;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;
import scantling.plan.Started;
import scantling.stock.Rack;
import scantling.timber.SpeciesTable;

/** Estimates of whole pieces, checked by sums made again here and by hand. */
class PricingTest {
    private static final Shop SHOP = new Shop(
            Shop.usual().tolerances(), Shop.usual().allowances(), Shop.usual().rack(), new Effort(50, 1));
    /** One shelf of one board: 1000 x 200 x 20 of white oak. */
    private static final String BOARD = """
        piece: A board
        for: Somebody
        size: 1000 wide, 200 deep, 20 high
        materials:
          oak: {solid: white oak, thickness: 20}
        build:
          - board: {name: shelf, of: oak, on: bottom}
        finish: {top: oil x 2}
        """;

    private static final String RATES = """
        currency: EUR
        hour: 50
        machine hour: 0
        overhead: 10 %
        delivery: 0
        risk: 5 %
        margin: 20 %
        tax: 20 %
        deposit: 30 %
        stages: {start of finishing: 30 %}
        rounding: 1
        rounding rule: up
        offcut credit: 0
        prices: {white oak: 10, oil: 20, abrasives: 0}
        work: {making: 4 h}
        """;

    private static Basis basis(String text, Work work) {
        Piece piece = PieceReader.read(text, Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        Plan plan = Planner.plan(piece, BenchLog.EMPTY, SHOP).plan();
        assertEquals(List.of(), plan.problems());
        return Costing.basis(plan, SHOP, work);
    }

    private static Rates rates(String text) {
        RatesReader.Result result = RatesReader.read(text);
        assertEquals(List.of(), result.problems());
        return result.rates().orElseThrow();
    }

    static List<String> starters() {
        return Starters.NAMES;
    }

    /**
     * By hand. One 4/4 board as bought, 8 ft x 6 in unless the shop's allowances say otherwise, is its board feet times
     * 10; four hours at 50 are 200; oil by the litre at 20; 10 % overhead, 5 % risk; over 0.8; up to a whole euro.
     */
    @Test
    void aPriceIsTheSumOfItsLinesOverOneLessTheMargin() {
        Basis basis = basis(BOARD, Work.NONE);
        Estimate estimate = Pricing.estimate(basis, rates(RATES));
        var stock = basis.sawn().get(0).plan().used().get(0).stock();
        double feet = 1.25
                * stock.width().toInches()
                * stock.length().plus(basis.sawn().get(0).ends()).toInches()
                / 144;
        double thick = basis.sawn().get(0).rough().orElseThrow().rough().value().toInches();
        double boards = Math.rint(feet / 1.25 * thick * 1000) / 100;
        double oil = Math.rint(basis.finish().buy().get(0).litres().likely() * 2000) / 100;
        double cost = (boards + oil + 200) * 1.10 * 1.05;
        assertEquals(
                boards, estimate.of(Line.Section.MATERIALS).likely().amount().doubleValue(), 0.011);
        assertEquals(cost, estimate.totals().cost().likely().amount().doubleValue(), 0.05);
        assertEquals(Math.ceil(cost / 0.8), estimate.totals().price().amount().doubleValue(), 1e-9);
        assertEquals(estimate.totals().price().times(1.2), estimate.totals().toPay());
        assertTrue(estimate.complete());
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everySumOfAStarterIsTheSumOfItsParts(String starter) {
        Estimate estimate = Pricing.estimate(basis(Started.text(starter), Work.NONE), rates(RATES));
        Money lines =
                estimate.lines().stream().map(line -> line.cost().likely()).reduce(Money.zero("EUR"), Money::plus);
        assertEquals(lines, estimate.totals().cost().likely());
        Money paid = estimate.payments().stream().map(Estimate.Payment::sum).reduce(Money.zero("EUR"), Money::plus);
        assertEquals(estimate.totals().toPay(), paid);
        assertTrue(estimate.totals().median().compareTo(estimate.totals().ninety()) <= 0);
        assertTrue(estimate.totals().margin().amount().signum() > 0);
    }

    @Test
    void offcutsThatAreKeptAreCreditedByTheShopsRule() {
        Basis basis = basis(Started.text("bookcase"), Work.NONE);
        Money none =
                Pricing.estimate(basis, rates(RATES)).of(Line.Section.MATERIALS).likely();
        Money half = Pricing.estimate(basis, rates(RATES.replace("offcut credit: 0", "offcut credit: 50 %")))
                .of(Line.Section.MATERIALS)
                .likely();
        Money whole = Pricing.estimate(basis, rates(RATES.replace("offcut credit: 0", "offcut credit: 100 %")))
                .of(Line.Section.MATERIALS)
                .likely();
        assertTrue(half.compareTo(none) < 0);
        assertEquals(
                none.minus(whole).amount().doubleValue(),
                2 * none.minus(half).amount().doubleValue(),
                0.05);
    }

    @Test
    void withoutHoursThereIsNoQuoteAndTheMakerIsTold() {
        Basis basis = basis(BOARD, Work.NONE);
        Rates rates = rates(RATES.replaceAll("(?m)^work:.*\n", ""));
        Estimate estimate = Pricing.estimate(basis, rates);
        assertFalse(estimate.complete());
        assertEquals(Optional.empty(), Quote.of(basis, estimate, rates));
        assertTrue(estimate.findings().get(0).sentence().contains("how many hours"));
    }

    /** Textbook on estimating man-hours: the itemised time and the whole-job guess should agree. */
    @Test
    void hoursOfTheRouteWinAndADifferentGuessIsTold() {
        Work route = new Work(List.of(new Work.Hours("making", new Amount(400, 480, 700), true)), "the route");
        Estimate estimate = Pricing.estimate(basis(BOARD, route), rates(RATES));
        assertEquals(Money.of("400", "EUR"), estimate.of(Line.Section.LABOUR).likely());
        assertTrue(estimate.findings().stream().anyMatch(one -> one.sentence().contains("100 % apart")));
        assertTrue(estimate.totals().median().compareTo(estimate.totals().ninety()) < 0);
    }

    /** By hand: mean (4 + 4 x 5 + 12) / 6 = 6 h, deviation 8/6 h; nine of ten under 6 + 1.2816 x 1.3333 = 7.709 h. */
    @Test
    void oddsComeFromThreePointEstimates() {
        Work route = new Work(List.of(new Work.Hours("making", new Amount(240, 300, 720), false)), "the route");
        String bare = RATES.replace("overhead: 10 %", "overhead: 0").replace("white oak: 10", "white oak: 0");
        Basis basis = basis(BOARD.replaceAll("(?m)^finish:.*\n", ""), route);
        Estimate.Totals totals = Pricing.estimate(basis, rates(bare.replaceAll("(?m)^work:.*\n", "")))
                .totals();
        assertEquals(300, totals.median().amount().doubleValue(), 0.01);
        assertEquals(7.709 * 50, totals.ninety().amount().doubleValue(), 0.05);
    }

    @Test
    void aQuoteTellsTheClientNothingOfItsWorkings() {
        Basis basis = basis(BOARD, Work.NONE);
        Rates rates = rates(RATES);
        Quote quote = Quote.of(basis, Pricing.estimate(basis, rates), rates).orElseThrow();
        assertEquals(Optional.of("Somebody"), quote.client());
        String all = quote.toString().toLowerCase(Locale.ROOT);
        for (String inner : List.of("margin", "overhead", "hour", "risk", "labour", "cost")) {
            assertFalse(all.contains(inner), inner);
        }
        assertTrue(quote.gets().stream().anyMatch(line -> line.contains("white oak")));
        assertTrue(quote.terms().get(0).contains("30 days"));
    }

    @Test
    void aQuoteCountsDrawersAndDoors() {
        Basis basis = basis(Started.text("sideboard"), Work.NONE);
        Rates rates = rates(RATES);
        Estimate estimate = Pricing.estimate(basis, rates);
        assertEquals(
                List.of(),
                estimate.findings().stream()
                        .filter(one -> one.sentence().startsWith("No price"))
                        .toList());
        assertTrue(Quote.of(basis, estimate, rates).orElseThrow().gets().contains("With 2 doors, 4 drawers."));
    }

    @Test
    void theCostSheetSetsActualAgainstEstimateAndSaysWhatToLearn() {
        Basis basis = basis(BOARD, Work.NONE);
        Rates rates = rates(RATES);
        Actual actual = Actual.read("hours: {making: 6}\nspent: {materials: 60, finish: 4, consumables: 0}", "EUR")
                .actual()
                .orElseThrow();
        CostSheet sheet = CostSheet.of(Pricing.estimate(basis, rates), actual, rates);
        assertTrue(sheet.rows().contains(new CostSheet.Row("making", "4.0 h", "6.0 h", "+50 %")));
        assertTrue(sheet.lessons().get(0).contains("plan 5.0 h"));
        Money price = Pricing.estimate(basis, rates).totals().price();
        // 60 + 4 + 6 x 50 = 364, and a tenth of it is overhead: 400.40
        assertEquals(Optional.of(price.minus(Money.of("400.40", "EUR"))), sheet.profit());
    }

    @Test
    void twoVersionsStandSideBySideWithTheirDifferences() {
        Basis oak = basis(BOARD, Work.NONE);
        Basis walnut = basis(BOARD.replace("white oak", "black walnut"), Work.NONE);
        Rates rates = rates(RATES.replace("white oak: 10", "white oak: 10, black walnut: 15"));
        Beside beside = Beside.of(
                new Beside.Version(oak, Pricing.estimate(oak, rates), List.of()),
                new Beside.Version(walnut, Pricing.estimate(walnut, rates), List.of()),
                rates);
        Beside.Row price = beside.rows().stream()
                .filter(row -> row.what().equals("price"))
                .findFirst()
                .orElseThrow();
        assertTrue(price.difference().startsWith("+"));
        assertEquals("other", beside.rows().get(0).difference());
    }

    /** Volume by hand, 1.0 x 0.2 x 0.02 m, times the density of the species table. */
    @Test
    void weightIsVolumeTimesDensity() {
        double density = SpeciesTable.standard()
                .find("white oak")
                .orElseThrow()
                .density()
                .getAsDouble();
        assertEquals(
                0.004 * density, Weight.of(basis(BOARD, Work.NONE).assembly()).kilograms(), 1e-6);
    }

    /** Wood Handbook figures by way of the species table: the same board moves and weighs as its wood does. */
    @Test
    void woodsForAPieceStandInATable() {
        TimberChoice choice = TimberChoice.of(basis(BOARD, Work.NONE), rates(RATES), Rack.EMPTY)
                .orElseThrow();
        assertEquals("white oak", choice.wood());
        TimberChoice.Row oak = row(choice, "white oak");
        TimberChoice.Row cherry = row(choice, "black cherry");
        assertTrue(oak.movement().orElseThrow().compareTo(cherry.movement().orElseThrow()) > 0);
        assertEquals(
                SpeciesTable.standard()
                        .find("black cherry")
                        .orElseThrow()
                        .mechanics()
                        .elasticity(),
                cherry.stiffness());
        assertEquals(oak.timber(), oak.perPart());
        assertTrue(cherry.stain().contains("blotches"));
    }

    private static TimberChoice.Row row(TimberChoice choice, String wood) {
        return choice.rows().stream()
                .filter(row -> row.wood().equals(wood))
                .findFirst()
                .orElseThrow();
    }
}
