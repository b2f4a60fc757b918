package scantling.shop;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Tolerances;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.piece.Problem;
import scantling.piece.Spelling;
import scantling.plan.ShopReader;
import scantling.stock.Allowances;
import scantling.stock.Rack;

/** The parts of the shop's settings, each with the names and values it takes. */
public enum Section {
    /** Milling allowances, kerfs, trims and least offcuts: the keys of {@link Allowances#keys}. */
    ALLOWANCE {
        @Override
        List<String> names() {
            return Allowances.keys();
        }

        @Override
        Optional<String> fault(String value) {
            return length(value).isPresent() ? Optional.empty() : Optional.of("Write a length, such as 3.2 mm.");
        }
    },
    /** How far off a process may come out, either way. */
    TOLERANCE {
        @Override
        List<String> names() {
            return List.copyOf(new TreeSet<>(Tolerances.standard().byProcess().keySet()));
        }

        @Override
        Optional<String> fault(String value) {
            return ALLOWANCE.fault(value);
        }
    },
    /** The maker's own tools: a saw or cutter and the width of its cut. */
    TOOL {
        @Override
        Optional<String> fault(String value) {
            return ALLOWANCE.fault(value);
        }
    },
    /** Money: {@code hour}, {@code overhead per hour} in the money of the shop, {@code margin} in percent. */
    RATE {
        @Override
        List<String> names() {
            return List.of("hour", "overhead per hour", "margin");
        }

        @Override
        Optional<String> fault(String value) {
            return number(value, 1_000_000).isPresent()
                    ? Optional.empty()
                    : Optional.of("Write a number that is not negative, such as 62.50.");
        }
    },
    /** Hours worked on a day of the week. */
    HOURS {
        @Override
        List<String> names() {
            return Stream.of(DayOfWeek.values())
                    .map(day -> day.name().toLowerCase(Locale.ROOT))
                    .toList();
        }

        @Override
        Optional<String> fault(String value) {
            return number(value, 24).isPresent()
                    ? Optional.empty()
                    : Optional.of("Write hours from 0 to 24, such as 7.5.");
        }
    },
    /** Days on which nobody works, by date; the value says why. */
    CLOSED {
        @Override
        Optional<String> nameFault(String name) {
            try {
                LocalDate.parse(name);
                return Optional.empty();
            } catch (DateTimeParseException noDate) {
                return Optional.of("Write the day as in 2026-12-24.");
            }
        }
    },
    /** Air of the place the pieces go to: {@code driest} and {@code dampest}, relative humidity in percent. */
    CLIMATE {
        @Override
        List<String> names() {
            return List.of("driest", "dampest");
        }

        @Override
        Optional<String> fault(String value) {
            return number(value, 100).isPresent() ? Optional.empty() : Optional.of("Write a percentage from 0 to 100.");
        }
    },
    /** All the rest, as one text in the words of {@code docs/shop.md}; what a section above says comes before it. */
    TEXT {
        @Override
        List<String> names() {
            return List.of(Section.SHOP);
        }

        @Override
        int longest() {
            return LONGEST_TEXT;
        }

        @Override
        Optional<String> fault(String value) {
            List<Problem> problems = ShopReader.read(value, Rack.EMPTY).problems();
            return problems.isEmpty()
                    ? Optional.empty()
                    : Optional.of(problems.stream()
                            .map(problem -> "%s: %s %s".formatted(problem.span(), problem.message(), problem.remedy()))
                            .collect(Collectors.joining(" ")));
        }
    },
    /** The maker's own edge and moulding profiles, in the words of the language. */
    PROFILE;

    /** The name under which the text of the whole shop stands. */
    public static final String SHOP = "shop";

    private static final int LONGEST_TEXT = 100_000;
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_VALUE = 2_000;

    /** In words: {@code allowance}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The section of this word. */
    public static Optional<Section> find(String word) {
        return Stream.of(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    /** The names it knows; empty when the maker names them. */
    List<String> names() {
        return List.of();
    }

    Optional<String> nameFault(String name) {
        List<String> known = names();
        return known.isEmpty() || known.contains(name)
                ? Optional.empty()
                : Optional.of(
                        (Spelling.maybe(name, known) + " It is one of: " + String.join(", ", known) + ".").strip());
    }

    Optional<String> fault(String value) {
        return Optional.empty();
    }

    int longest() {
        return LONGEST_VALUE;
    }

    /** What is wrong with a setting, with what to do. */
    Optional<String> fault(Setting setting) {
        if (setting.name().isBlank() || setting.name().length() > LONGEST_NAME) {
            return Optional.of("Give it a name of at most %d characters.".formatted(LONGEST_NAME));
        }
        if (setting.value().length() > longest()) {
            return Optional.of("Write at most %d characters.".formatted(longest()));
        }
        Optional<String> wrongName = nameFault(setting.name());
        return wrongName.isPresent() || setting.value().isEmpty() ? wrongName : fault(setting.value());
    }

    static Optional<Length> length(String value) {
        return LengthReader.read(value, Unit.MM).filter(length -> !length.isNegative());
    }

    static Optional<Double> number(String value, double most) {
        if (!value.matches("\\d{1,9}(\\.\\d{1,4})?")) {
            return Optional.empty();
        }
        double number = Double.parseDouble(value);
        return number <= most ? Optional.of(number) : Optional.empty();
    }
}
