package scantling.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the sizes a space is divided into: {@code [130, 2 shares, rest]} or {@code 3 equal}. */
final class PortionReader {
    private static final Pattern EQUAL = Pattern.compile("(\\d{1,3})\\s+equal(?:\\s+(?:ones|shares|parts))?");
    private static final Pattern SHARES = Pattern.compile("(\\d{1,3})\\s+shares?");
    private static final String RULE = "sizes: a list of lengths, \"rest\" and \"2 shares\", or one \"3 equal\"";

    private final Reading reading;

    PortionReader(Reading reading) {
        this.reading = reading;
    }

    Optional<Value> read(Node node, Literals literals) {
        boolean single = node instanceof Node.Scalar;
        if (node.isEmpty() || !(single || node instanceof Node.Items)) {
            return reading.refuse(node, literals.label(), RULE);
        }
        List<Node> items = node instanceof Node.Items list ? list.items() : List.of(node);
        List<Portion> portions = new ArrayList<>();
        boolean whole = !items.isEmpty();
        for (int i = 0; i < items.size(); i++) {
            List<Portion> read = portion(items.get(i), single ? literals : literals.inside("" + (i + 1)));
            whole &= !read.isEmpty();
            portions.addAll(read);
        }
        if (items.isEmpty()) {
            return reading.refuse(node, literals.label(), RULE);
        }
        return whole ? Optional.of(new Value.OfPortions(List.copyOf(portions))) : Optional.empty();
    }

    private List<Portion> portion(Node node, Literals literals) {
        Optional<Node.Scalar> scalar = reading.scalar(node, literals.label(), RULE);
        if (scalar.isEmpty()) {
            return List.of();
        }
        String text = scalar.get().text().strip();
        Matcher equal = EQUAL.matcher(text);
        Matcher shares = SHARES.matcher(text);
        if (text.equals("rest")) {
            return List.of(new Portion.Shares(1));
        }
        if (equal.matches()) {
            return counted(node, literals, equal.group(1))
                    .map(count -> Collections.<Portion>nCopies(count, new Portion.Shares(1)))
                    .orElse(List.of());
        }
        if (shares.matches()) {
            return counted(node, literals, shares.group(1))
                    .map(count -> List.<Portion>of(new Portion.Shares(count)))
                    .orElse(List.of());
        }
        return reading.length(node, literals, Reading.Sign.POSITIVE)
                .map(size -> List.<Portion>of(new Portion.Fixed(size)))
                .orElse(List.of());
    }

    private Optional<Integer> counted(Node node, Literals literals, String digits) {
        int count = Integer.parseInt(digits);
        return count > 0 ? Optional.of(count) : reading.refuse(node, literals.label(), "one or more");
    }
}
