package scantling.shop;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Asks a file whether it is whole. */
final class Soundness {
    private Soundness() {}

    /** @throws ShopTrouble when it is damaged; the file is not touched */
    static void check(Path file) {
        List<String> faults = Database.guarded(file, () -> faults(file));
        if (!faults.isEmpty()) {
            throw Troubles.damaged(file, faults.get(0));
        }
    }

    private static List<String> faults(Path file) throws SQLException {
        List<String> faults = new ArrayList<>();
        try (Connection connection = Database.readOnly(file).getConnection();
                Statement statement = connection.createStatement();
                ResultSet answer = statement.executeQuery("PRAGMA integrity_check(1)")) {
            while (answer.next()) {
                String line = answer.getString(1);
                if (!line.equals("ok")) {
                    faults.add(line);
                }
            }
        }
        return faults;
    }
}
