package scantling.packet;

import java.time.LocalDate;
import java.util.Optional;
import scantling.pricing.Quote;

/**
 * A quote as one self-contained page: what the client gets, a drawing, the price and its terms.
 *
 * @param quote what is offered
 * @param drawing its drawing as markup
 * @param given the day it is given, where said
 */
public record QuotePage(Quote quote, String drawing, Optional<LocalDate> given) {
    /** Writes it. @param given the day it is given; without one its terms count from the day it is signed */
    public static String html(Quote quote, PacketContent content, Optional<LocalDate> given) {
        String drawing = Drawings.of(content).views().stream()
                .findFirst()
                .map(view -> view.screenSvg())
                .orElse("");
        return Templates.render("quote.jte", new QuotePage(quote, drawing, given), JobSheetPage.css());
    }

    /** Behind the title: for whom. */
    public String forWhom() {
        return quote.client().map(name -> ", for " + name).orElse("");
    }

    /** Who quotes; empty when nobody said. */
    public String from() {
        return quote.from().orElse("");
    }

    /** The day it is given; empty when nobody said. */
    public String date() {
        return given.map(LocalDate::toString).orElse("");
    }

    /** The last day it stands; empty when nobody said when it was given. */
    public String until() {
        return given.map(day -> day.plusDays(quote.validDays()).toString()).orElse("");
    }
}
