package scantling.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import scantling.construct.Construction;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;
import scantling.piece.BenchLog;
import scantling.piece.BenchLogReader;
import scantling.piece.EditResult;
import scantling.piece.Language;
import scantling.piece.Piece;
import scantling.piece.PieceBytes;
import scantling.piece.PieceEditor;
import scantling.piece.PieceReader;
import scantling.piece.Problem;
import scantling.piece.ReadResult;
import scantling.piece.Woods;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** What every command needs: the language, the woods, and reading with all problems told. */
final class Workbench {
    static final Language LANGUAGE = Construction.language();
    static final Woods WOODS = StandardWoods.standard();

    private Workbench() {}

    /** Reads the tables that every plan needs, so that they are there when it is made. */
    static void getReady() {
        Shop.usual();
    }

    /** Reads a piece, or tells everything that is wrong with its text. */
    static Piece read(Path file) {
        ReadResult result = PieceReader.read(text(file), LANGUAGE, WOODS);
        return result.piece().orElseThrow(() -> new Failure(told(file, result.problems())));
    }

    /** The text of a piece's file. */
    static String text(Path file) {
        PieceBytes bytes = PieceReader.readBytes(TextFile.read(file));
        return bytes.text()
                .orElseThrow(
                        () -> new Failure(told(file, bytes.problem().stream().toList())));
    }

    /** The text with one given value replaced, or why it cannot be. */
    static String edited(Path file, String text, String name, String value) {
        EditResult result = PieceEditor.replace(text, LANGUAGE, WOODS, name, value);
        return result.text().orElseThrow(() -> new Failure(told(file, result.problems())));
    }

    /** Reads what the bench says. */
    static BenchLog readBench(Optional<Path> file, Piece piece) {
        if (file.isEmpty()) {
            return BenchLog.EMPTY;
        }
        BenchLogReader.Result result = BenchLogReader.readBytes(TextFile.read(file.get()), piece.unit());
        return result.log().orElseThrow(() -> new Failure(told(file.get(), result.problems())));
    }

    /** Plans a piece, or tells everything that keeps it from being built. */
    static Plan plan(Path file, Optional<Path> measured) {
        return plan(file, measured, Shop.usual());
    }

    /** The same in a shop. */
    static Plan plan(Path file, Optional<Path> measured, Shop shop) {
        return plan(file, measured, shop, Optional.empty());
    }

    /** The same told in a unit other than the piece's own. */
    static Plan plan(Path file, Optional<Path> measured, Shop shop, Optional<Unit> told) {
        Piece piece = read(file);
        BenchLog bench = readBench(measured, piece);
        Planner.Outcome outcome = Planner.plan(told.map(piece::told).orElse(piece), bench, shop);
        if (!outcome.benchProblems().isEmpty()) {
            throw new Failure(told(measured.orElse(file), outcome.benchProblems()));
        }
        if (!outcome.plan().problems().isEmpty()) {
            throw new Failure(told(file, outcome.plan().problems()));
        }
        return outcome.plan();
    }

    /** Plans a piece from a text that is in no file. @param file what to call it */
    static Plan plan(Path file, String text, Shop shop) {
        ReadResult result = PieceReader.read(text, LANGUAGE, WOODS);
        Piece piece = result.piece().orElseThrow(() -> new Failure(told(file, result.problems())));
        Plan plan = Planner.plan(piece, BenchLog.EMPTY, shop).plan();
        if (!plan.problems().isEmpty()) {
            throw new Failure(told(file, plan.problems()));
        }
        return plan;
    }

    /** Whether the maker of a piece thinks in inches. */
    static boolean inInches(Plan plan) {
        return LengthFormat.of(plan.assembly().piece().unit()).inches();
    }

    static String told(Path file, List<Problem> problems) {
        StringBuilder text = new StringBuilder();
        for (Problem problem : problems) {
            text.append("%s:%d:%d: %s%n"
                    .formatted(file, problem.span().line(), problem.span().column(), problem.message()));
            if (!problem.remedy().isEmpty()) {
                text.append("    %s%n".formatted(problem.remedy()));
            }
        }
        String count = problems.size() == 1 ? "One thing is wrong." : problems.size() + " things are wrong.";
        return text + count + " Nothing was written.";
    }
}
