package scantling.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Option;
import scantling.piece.Workshop;
import scantling.plan.Shop;
import scantling.plan.ShopReader;
import scantling.route.days.UsualHours;
import scantling.shop.ShopFolder;
import scantling.shop.ShopStore;
import scantling.shop.ShopTrouble;
import scantling.stock.Rack;

/** Names the shop a piece is made in: a text of its settings, or the folder of a shop's own data. */
final class SettingsOption {
    @Option(
            names = "--settings",
            paramLabel = "SHOP",
            description = "What your shop sets for itself (docs/shop.md), or the folder of its data; all as usual when"
                    + " not said.")
    private Optional<Path> settings = Optional.empty();

    /** When the shop works: as it says, else the usual hours where this machine stands. */
    Workshop calendar(Shop shop) {
        return settings.isPresent() ? shop.office().calendar() : UsualHours.in(ZoneId.systemDefault());
    }

    /** The shop, or everything that is wrong with what it says. */
    Shop shop() {
        return settings.map(SettingsOption::read).orElseGet(Shop::usual);
    }

    private static Shop read(Path path) {
        if (!Files.isDirectory(path)) {
            ShopReader.Result result = ShopReader.readBytes(TextFile.read(path), Rack.EMPTY);
            return result.shop().orElseThrow(() -> new Failure(Workbench.told(path, result.problems())));
        }
        if (!Files.exists(path.resolve(ShopStore.FILE))) {
            throw new Failure("%s holds no shop: there is no %s in it.".formatted(path, ShopStore.FILE));
        }
        try {
            return new ShopFolder(path, Clock.systemUTC()).shop();
        } catch (ShopTrouble trouble) {
            throw new Failure(String.valueOf(trouble.getMessage()));
        }
    }
}
