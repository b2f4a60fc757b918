package scantling.shop;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;

/**
 * Who may come in. A device holds a random token of 256 bits; the shop keeps only its hash, so that nobody who reads the
 * file can come in with what stands there.
 */
public final class Devices {
    private static final int TOKEN_BYTES = 32;
    private static final int LONGEST_NAME = 80;
    private static final RowMapper<Device> MAPPER = (results, context) -> new Device(
            results.getString("id"),
            results.getString("name"),
            Records.instant(results.getString("paired")),
            Optional.of(results.getString("revoked"))
                    .filter(revoked -> !revoked.isEmpty())
                    .map(Records::instant));

    private final Database database;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    Devices(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** Lets a device in. The token is told here and never again. @param name what the maker calls it; shortened if long */
    public Device.Paired pair(String name) {
        String token = random(TOKEN_BYTES);
        String called = name.strip().substring(0, Math.min(name.strip().length(), LONGEST_NAME));
        Device device = new Device("device-" + random(9), called, now(), Optional.empty());
        database.write(handle -> handle.execute(
                "INSERT INTO device (id, name, token, paired, revoked) VALUES (?, ?, ?, ?, '')",
                device.id(),
                device.name(),
                sha256(token.getBytes(StandardCharsets.UTF_8)),
                device.paired().toString()));
        return new Device.Paired(device, token);
    }

    /** The device of a token, unless it was revoked or never let in. */
    public Optional<Device> find(String token) {
        return database.read(handle -> handle.createQuery("SELECT * FROM device WHERE token = ? AND revoked = ''")
                .bind(0, sha256(token.getBytes(StandardCharsets.UTF_8)))
                .map(MAPPER)
                .findFirst());
    }

    /** All that were ever let in. */
    public List<Device> all() {
        return database.read(handle -> handle.createQuery("SELECT * FROM device ORDER BY paired, id")
                .map(MAPPER)
                .list());
    }

    /** Lets a device in no more. @return whether there was one to revoke */
    public boolean revoke(String id) {
        return database.write(handle -> handle.execute(
                        "UPDATE device SET revoked = ? WHERE id = ? AND revoked = ''", now().toString(), id))
                == 1;
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    private String random(int bytes) {
        byte[] chance = new byte[bytes];
        random.nextBytes(chance);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(chance);
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
