package scantling.packet;

import java.util.List;

/**
 * What a packet says of the job itself; all of it is text, so that the same job gives the same paper on any day.
 *
 * @param shop name of the workshop
 * @param number of the job
 * @param lines further lines of the title block: wanted by, printed on, revision
 */
public record JobLines(String shop, String number, List<Line> lines) {
    /** One cell of the title block. @param label what @param text says */
    public record Line(String label, String text) {}

    /** Takes its own copy. */
    public JobLines {
        lines = List.copyOf(lines);
    }
}
