package scantling.shop;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Length;
import scantling.piece.Piece;
import scantling.piece.Spelling;
import scantling.plan.Planner;
import scantling.stock.Offcut;
import scantling.stock.Stock;

/** What happens at the bench: each entry is checked against the piece as it stands and added to the log. */
final class BenchActs {
    private static final int LONGEST_NOTE = 20_000;
    private static final int LONGEST_STINT = 24 * 60;

    private final Changes changes;
    private final Shelves shelves;

    BenchActs(Changes changes, Shelves shelves) {
        this.changes = changes;
        this.shelves = shelves;
    }

    Effect take(Act.Log log) {
        JobInputs inputs = shelves.inputs(log.job(), () -> shelves.bench(log.job()))
                .orElseThrow(() -> Refusal.of("There is no job called \"%s\".".formatted(log.job()), ""));
        BenchEntry entry = checked(log.entry(), inputs);
        changes.rows().append(ShopTable.BENCH, BenchRows.row(changes.act(), log.job(), entry));
        return new Effect(BenchRows.kind(entry), words(entry), log.job(), entry.subject());
    }

    private BenchEntry checked(BenchEntry entry, JobInputs inputs) {
        if (entry instanceof BenchEntry.Cut cut) {
            return frozen(cut, inputs);
        } else if (entry instanceof BenchEntry.Sawn sawn) {
            saw(sawn, inputs);
        } else if (entry instanceof BenchEntry.Measured measured) {
            known("number", measured.name(), assembly(inputs).names().keySet());
            positive(measured.name(), measured.size());
        } else if (entry instanceof BenchEntry.Spoilt spoilt) {
            Set<String> parts = parts(assembly(inputs));
            parts.addAll(BenchFold.touched(inputs.bench()));
            known("part", spoilt.part(), parts);
        } else if (entry instanceof BenchEntry.Note note) {
            note(note);
        } else if (entry instanceof BenchEntry.Minutes minutes
                && (minutes.minutes() < 0 || minutes.minutes() > LONGEST_STINT)) {
            throw Refusal.of("%d minutes cannot be right.".formatted(minutes.minutes()), "Write from 0 to 1440.");
        }
        return entry;
    }

    private static Assembly assembly(JobInputs inputs) {
        Piece piece = JobBook.read(inputs.revision().text())
                .piece()
                .orElseThrow(() -> Refusal.of("The text of this job does not read.", "Put the text right first."));
        return Planner.assemble(piece, inputs.bench(), inputs.shop());
    }

    private static Set<String> parts(Assembly assembly) {
        return assembly.parts().stream().map(Part::path).collect(Collectors.toCollection(TreeSet::new));
    }

    private static void known(String what, String name, Set<String> names) {
        if (!names.contains(name)) {
            throw Refusal.of(
                    "No %s of this piece is called \"%s\".".formatted(what, name), Spelling.maybe(name, names));
        }
    }

    private static void positive(String name, Length size) {
        if (!size.isPositive()) {
            throw Refusal.of("%s cannot be %s.".formatted(name, size), "Write a length greater than zero.");
        }
    }

    /** Sizes not measured are those of the plan at this moment; from now on no plan moves them. */
    private static BenchEntry.Cut frozen(BenchEntry.Cut cut, JobInputs inputs) {
        Assembly assembly = assembly(inputs);
        known("part", cut.part(), parts(assembly));
        cut.sizes().forEach((name, size) -> positive(cut.part() + " / " + name, size));
        Part part = assembly.parts().stream()
                .filter(one -> one.path().equals(cut.part()))
                .findFirst()
                .orElseThrow();
        Map<String, Length> sizes = new LinkedHashMap<>();
        sizes.put("length", part.length().value());
        sizes.put("width", part.width().value());
        sizes.put("thickness", part.thickness().value());
        known("size", cut.part(), cut.sizes().keySet(), sizes.keySet());
        sizes.putAll(cut.sizes());
        return new BenchEntry.Cut(cut.part(), sizes);
    }

    private static void known(String what, String part, Set<String> said, Set<String> names) {
        if (!names.containsAll(said)) {
            throw Refusal.of("%s has no %s among %s.".formatted(part, what, said), "Say length, width or thickness.");
        }
    }

    private void saw(BenchEntry.Sawn sawn, JobInputs inputs) {
        Set<String> parts = parts(assembly(inputs));
        for (BenchEntry.SawnPart part : sawn.parts()) {
            known("part", part.part(), parts);
            positive(part.part() + " / length", part.length());
            positive(part.part() + " / width", part.width());
            if (part.pieces() < 1) {
                throw Refusal.of("%s needs one piece or more.".formatted(part.part()), "");
            }
        }
        RackActs rack = new RackActs(changes);
        sawn.stock().ifPresent(id -> {
            Stock stock = RackRows.onHand(rack.inRack(id)).stock();
            fits(stock, sawn);
            changes.remove(ShopTable.RACK, id);
        });
        String from = sawn.stock().orElse("bought for " + inputs.job().id());
        for (OnHand offcut : sawn.offcuts()) {
            rack.add(new OnHand(new Offcut(offcut.stock(), from), offcut.price(), offcut.place()));
        }
    }

    /** No saw makes more wood than it was given, nor a longer or wider piece. */
    private static void fits(Stock stock, BenchEntry.Sawn sawn) {
        double left = area(stock.length(), stock.width());
        for (BenchEntry.SawnPart part : sawn.parts()) {
            inside(stock, part.part(), part.length(), part.width());
            left -= part.pieces() * area(part.length(), part.width());
        }
        for (OnHand offcut : sawn.offcuts()) {
            inside(
                    stock,
                    offcut.stock().id(),
                    offcut.stock().length(),
                    offcut.stock().width());
            left -= area(offcut.stock().length(), offcut.stock().width());
        }
        if (left < 0) {
            throw Refusal.of(
                    "More was sawn from %s than it held.".formatted(stock.id()), "Look at the sizes and the pieces.");
        }
    }

    private static double area(Length length, Length width) {
        return length.toMillimetres() * width.toMillimetres();
    }

    private static void inside(Stock stock, String name, Length length, Length width) {
        Length longer = stock.length().max(stock.width());
        Length shorter = stock.length().min(stock.width());
        if (length.max(width).compareTo(longer) > 0 || length.min(width).compareTo(shorter) > 0) {
            throw Refusal.of(
                    "%s (%s by %s) does not come out of %s (%s by %s)."
                            .formatted(name, length, width, stock.id(), stock.length(), stock.width()),
                    "Look at the sizes.");
        }
    }

    private void note(BenchEntry.Note note) {
        if (note.text().length() > LONGEST_NOTE) {
            throw Refusal.of("A note has at most %d characters.".formatted(LONGEST_NOTE), "Write a shorter one.");
        }
        Optional<String> missing = note.photo()
                .filter(photo -> changes.rows().number("SELECT count(*) FROM photo WHERE id = ?", photo) == 0);
        if (missing.isPresent()) {
            throw Refusal.of("The photo of this note has not arrived.", "Send the photo first.");
        }
    }

    private static String words(BenchEntry entry) {
        if (entry instanceof BenchEntry.Sawn sawn) {
            return "sawn: "
                    + String.join(
                            ", ",
                            sawn.parts().stream().map(BenchEntry.SawnPart::part).toList());
        } else if (entry instanceof BenchEntry.Measured measured) {
            return "measured %s: %s".formatted(measured.name(), measured.size());
        } else if (entry instanceof BenchEntry.Minutes minutes) {
            return "%d %s: %s"
                    .formatted(minutes.minutes(), minutes.minutes() == 1 ? "minute" : "minutes", minutes.subject());
        } else if (entry instanceof BenchEntry.Spoilt spoilt && !spoilt.why().isBlank()) {
            return "spoilt: %s (%s)".formatted(spoilt.part(), spoilt.why());
        }
        return BenchRows.kind(entry) + ": " + entry.subject();
    }
}
