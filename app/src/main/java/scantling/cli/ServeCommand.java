package scantling.cli;

import io.javalin.util.JavalinException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import scantling.shop.ShopFolder;
import scantling.shop.ShopStore;
import scantling.shop.ShopTrouble;
import scantling.web.WebServer;

/** Serves the shop's pages until it is stopped. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Open the shop: its jobs as pages on this machine, and with --lan on paired phones and tablets.")
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "Where the shop is kept; the folder scantling-shop at home when not said.")
    private Optional<Path> data = Optional.empty();

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Where to listen; ${DEFAULT-VALUE} when not said, 0 for any that is free.")
    private int port = 8417;

    @Option(names = "--lan", description = "Let paired devices on the workshop's network in; else only this machine.")
    private boolean lan;

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new Failure("--port %d: say a number from 0 to %d.".formatted(port, HIGHEST_PORT));
        }
        Path folder = data.orElseGet(ShopFolder::usual);
        try (ShopStore store = ShopStore.open(folder)) {
            serve(store, folder);
        } catch (ShopTrouble trouble) {
            throw new Failure(String.valueOf(trouble.getMessage()));
        }
        return Exit.WELL;
    }

    private void serve(ShopStore store, Path folder) throws InterruptedException {
        try (WebServer server = started(store)) {
            PrintWriter out = spec.commandLine().getOut();
            out.println("The shop in %s is open at %s".formatted(folder, server.address()));
            server.networkAddresses().forEach(address -> out.println("On the network, for paired devices: " + address));
            out.println("Stop it with Ctrl-C.");
            CountDownLatch stopped = new CountDownLatch(1);
            Thread closer = new Thread(
                    () -> {
                        server.close();
                        store.close();
                        stopped.countDown();
                    },
                    "closing the shop");
            Runtime.getRuntime().addShutdownHook(closer);
            stopped.await();
        }
    }

    private WebServer started(ShopStore store) {
        try {
            return WebServer.start(store, new WebServer.Options(port, lan), Clock.systemDefaultZone());
        } catch (JavalinException busy) {
            throw new Failure(
                    "Port %d cannot be listened on (%s). Another program may have it: say another with --port."
                            .formatted(port, busy.getMessage()));
        }
    }
}
