package scantling.packet;

import java.util.List;
import java.util.Optional;

/**
 * What a packet says of the job itself; all of it is text, so that the same job gives the same paper on any day.
 *
 * @param shop name of the workshop
 * @param number of the job
 * @param lines further lines of the title block: wanted by, printed on, revision
 * @param address where the job sheet is read in the workshop's network, for codes
 */
public record JobLines(String shop, String number, List<Line> lines, Optional<String> address) {
    /** One cell of the title block. @param label what @param text says */
    public record Line(String label, String text) {}

    /** Takes its own copy. */
    public JobLines {
        lines = List.copyOf(lines);
    }

    /** Of a job that is not served anywhere. */
    public JobLines(String shop, String number, List<Line> lines) {
        this(shop, number, lines, Optional.empty());
    }

    /** Whether there is nothing to say. */
    public boolean isSilent() {
        return shop.isEmpty() && number.isEmpty() && lines.isEmpty();
    }
}
