package scantling.shop;

import java.time.Instant;
import java.util.Optional;

/**
 * A phone, tablet or desk that may come in.
 *
 * @param id short and fixed
 * @param name what the maker calls it
 * @param paired since when
 * @param revoked since when it may no longer
 */
public record Device(String id, String name, Instant paired, Optional<Instant> revoked) {
    /** A device just paired, and the token that only it will ever hold. */
    public record Paired(Device device, String token) {}
}
