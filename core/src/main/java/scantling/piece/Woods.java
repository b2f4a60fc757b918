package scantling.piece;

import java.util.List;
import java.util.Optional;

/** What solid woods and sheet goods there are; told from outside so that reading does not depend on the tables. */
public interface Woods {
    /** The species of that name, as the tables write it. */
    Optional<String> findSolid(String name);

    /** The sheet good of that name, as the tables write it. */
    Optional<String> findSheet(String name);

    /** All species, for the nearest right spelling. */
    List<String> solids();

    /** All sheet goods, for the nearest right spelling. */
    List<String> sheets();
}
