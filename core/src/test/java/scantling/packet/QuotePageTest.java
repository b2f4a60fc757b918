package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.pricing.Estimate;
import scantling.pricing.Money;
import scantling.pricing.Quote;

/** A quote is a page of its own: offer, drawing, price, expiry. */
class QuotePageTest {
    private static Money euros(String sum) {
        return Money.of(sum, "EUR");
    }

    private static final Quote QUOTE = new Quote(
            "Shelf & <rail>",
            Optional.of("Somebody"),
            Optional.of("A workshop, 3 Mill Lane"),
            List.of("Made of white oak."),
            euros("1250"),
            euros("0"),
            euros("1250"),
            List.of(
                    new Estimate.Payment("on order", euros("500")),
                    new Estimate.Payment("before delivery", euros("750"))),
            List.of("This quote stands for 30 days from its date."),
            30);

    /** Thirty days from the last of January in a leap year, by the calendar: the first of March. */
    @Test
    void itShowsTheDrawingThePriceAndItsLastDay() {
        String page = QuotePage.html(QUOTE, Shelf.content(), Optional.of(LocalDate.of(2028, 1, 31)));
        assertTrue(page.contains("<svg"), "no drawing");
        assertTrue(page.contains("2028-03-01"), "no last day");
        assertTrue(page.contains("1,250.00 EUR") && page.contains("before delivery"));
    }

    @Test
    void whatTheMakerTypedCannotBecomeMarkup() {
        String page = QuotePage.html(QUOTE, Shelf.content(), Optional.empty());
        assertFalse(page.contains("<rail>"));
        assertTrue(page.contains("Shelf &amp; &lt;rail&gt;"));
    }
}
