package scantling.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import scantling.plan.Plan;
import scantling.plan.Shop;

/** The piece a command is about, what the bench says of it, and the shop's settings. */
final class PieceOption {
    @Parameters(paramLabel = "FILE", description = "The text of the piece.")
    private Path file = Path.of("");

    @Option(
            names = "--measured",
            paramLabel = "FILE",
            description = "What the bench says: measured sizes and parts cut.")
    private Optional<Path> measured = Optional.empty();

    @Mixin
    private SettingsOption settings = new SettingsOption();

    /** The plan of the piece. */
    Plan plan() {
        return plan(settings.shop());
    }

    /** Its plan in a shop that was asked for before. */
    Plan plan(Shop shop) {
        return Workbench.plan(file, measured, shop);
    }

    Path file() {
        return file;
    }

    SettingsOption settings() {
        return settings;
    }
}
