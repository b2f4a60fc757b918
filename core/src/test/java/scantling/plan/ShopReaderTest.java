package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.measure.Length;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.Problem;
import scantling.pricing.Estimate;
import scantling.pricing.Pricing;
import scantling.route.Minutes;
import scantling.route.Step;
import scantling.stock.Rack;

/** A shop's own settings reach everything that is worked out. */
class ShopReaderTest {
    private static final String BOARD = """
        piece: A board
        size: 1000 wide, 200 deep, 20 high
        materials:
          oak: {solid: white oak, thickness: 20}
        build:
          - board: {name: shelf, of: oak, on: bottom}
        finish: {top: house oil x 2}
        """;

    private static final String SHOP = """
        tools: {thin blade: 2.2 mm}
        allowances: {kerf: thin blade}
        tolerances: {planed: 0.1 mm}
        home: {temperature: 20, humidity: 45}
        calendar: {zone: Europe/Lisbon, hours: "9:00-12:00", friday: closed, benches: 2}
        rates:
          currency: GBP
          hour: 50
          hours: {finishing: 40}
          prices: {white oak: 10, house oil: 20}
        times: {finish: 10 to 20 min}
        set-ups: {finish: 4 min}
        coats: {house oil: {like: oil}}
        """;

    private static Shop shop(String text) {
        ShopReader.Result result = ShopReader.read(text, Rack.EMPTY);
        assertEquals(List.of(), result.problems());
        return result.shop().orElseThrow();
    }

    private static List<String> problems(String text) {
        return ShopReader.read(text, Rack.EMPTY).problems().stream()
                .map(Problem::message)
                .toList();
    }

    private static Plan plan(Shop shop) {
        Piece piece = PieceReader.read(BOARD, Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        return Planner.plan(piece, BenchLog.EMPTY, shop).plan();
    }

    @Test
    void aShopThatSaysNothingIsAsUsual() {
        Shop shop = shop("");
        assertEquals(Shop.usual().allowances().kerf(), shop.allowances().kerf());
        assertEquals(Office.usual().rates(), shop.office().rates());
        assertEquals(2, shop.office().calendar().on(LocalDate.of(2026, 11, 25)).size());
    }

    @Test
    void everySectionIsRead() {
        Shop shop = shop(SHOP);
        assertEquals(Length.mm("2.2"), shop.allowances().kerf().value());
        assertEquals(Length.mm("0.1"), shop.tolerances().of("planed").halfRange());
        assertEquals(new Minutes(10, 15, 20), shop.office().times().of("finish").each());
        assertEquals(4, shop.office().times().of("finish").setUp());
        assertEquals("GBP", shop.office().rates().currency());
        // 27 November 2026 is a Friday.
        assertEquals(List.of(), shop.office().calendar().on(LocalDate.of(2026, 11, 27)));
    }

    @Test
    void ratesTimesCoatsAndHomeReachThePlanAndItsPrice() {
        Shop shop = shop(SHOP);
        Plan plan = plan(shop);
        assertEquals(List.of(), plan.problems());
        assertEquals("house oil", plan.finish().buy().get(0).coat().name());
        assertTrue(plan.assembly().piece().conditions().home().isPresent());
        double square = plan.finish().groups().get(0).areas().whole();
        double minutes = plan.route().operations().stream()
                .filter(operation -> operation.step() == Step.FINISH)
                .mapToDouble(operation -> operation.hands().likely())
                .sum();
        assertEquals(2 * (4 + 15 * square), minutes, 1e-6);
        Estimate estimate =
                Pricing.estimate(Costing.basis(plan, shop), shop.office().rates());
        assertEquals("GBP", estimate.totals().price().currency());
        double finishing = estimate.lines().stream()
                .filter(line -> line.what().equals("finishing"))
                .findFirst()
                .orElseThrow()
                .cost()
                .likely()
                .amount()
                .doubleValue();
        assertEquals(minutes / 60 * 40, finishing, 0.006);
    }

    @Test
    void everythingWrongIsToldAtOnceWithItsPlace() {
        ShopReader.Result result = ShopReader.read("""
            allowances: {kerv: 3, sheet kerf: -2}
            rates: {hour: 0, margin: -5 %, prices: {white oak: 9 USD}}
            times: {dowel: 0 min}
            calendar: {hours: closed}
            coats: {mine: {like: nothing known}}
            saws: {big: 4}
            """, Rack.EMPTY);
        assertTrue(result.shop().isEmpty());
        List<String> told = result.problems().stream().map(Problem::message).toList();
        assertTrue(told.toString().contains("saws"), told::toString);
        assertTrue(told.toString().contains("never works"), told::toString);
        assertTrue(result.problems().stream().allMatch(problem -> problem.span().line() >= 1));
    }

    @Test
    void ratesThatAreZeroNegativeOrInAnotherMoneyAreRefused() {
        List<String> told = problems("rates: {hour: 0, margin: -5 %, prices: {white oak: 9 USD}}");
        assertEquals(
                List.of(
                        "\"hour\" cannot be 0.",
                        "\"margin\" cannot be -5.",
                        "\"white oak\" is in USD, all else in EUR."),
                told);
    }

    @Test
    void aUnitOfWorkTakesSomeTimeAndACoatIsLikeAKnownOne() {
        List<String> told = problems("""
            allowances: {kerv: 3, sheet kerf: -2}
            times: {dowel: 0 min}
            coats: {mine: {like: nothing known}}
            """);
        assertEquals(4, told.size(), told::toString);
    }
}
