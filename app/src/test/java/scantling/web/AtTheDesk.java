package scantling.web;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A shop in a folder of its own, with its pages open, and the desk's browser before it. */
abstract class AtTheDesk {
    @TempDir
    Path folder;

    OpenShop shop;
    OpenShop.Browser desk;

    @BeforeEach
    final void openShop() {
        shop = new OpenShop(folder, false);
        desk = shop.desk();
    }

    @AfterEach
    final void closeShop() {
        shop.close();
    }

    /** Sends a form as a page does. @param fields names and values in turn */
    final HttpResponse<String> post(String path, String... fields) {
        Map<String, String> all = new HashMap<>(Map.of("stamp", desk.stamp("/new")));
        for (int i = 0; i < fields.length; i += 2) {
            all.put(fields[i], fields[i + 1]);
        }
        return desk.post(path, all, "Accept", "text/html");
    }
}
