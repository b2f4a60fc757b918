package scantling.web;

import java.util.List;
import java.util.Optional;

/**
 * What stands around every page.
 *
 * @param title of the page
 * @param stamp goes back with everything the page sends
 * @param visitor who looks at it
 * @param inch whether figures are in inches
 * @param job the job the page is about
 * @param assets where style sheets and scripts are
 * @param path of the page
 */
public record Chrome(
        String title, String stamp, Visitor visitor, boolean inch, Optional<Link> job, Assets assets, String path) {
    private static final List<Link> ROOMS = List.of(
            new Link("/rack", "Rack"),
            new Link("/onhand", "Hardware and finish"),
            new Link("/clients", "Clients"),
            new Link("/settings", "Settings"),
            new Link("/guide", "Guide"),
            new Link("/devices", "Phones and tablets"));

    /** A way to somewhere. @param href where @param words what it is called */
    public record Link(String href, String words) {}

    /** The shop's own pages. */
    public List<Link> rooms() {
        return ROOMS;
    }

    /** Whether it is one of the shop's own pages that show sizes. */
    public boolean hasSizes() {
        return job.isEmpty()
                && visitor.desk()
                && (path.equals("/") || path.equals("/rack") || path.equals("/settings"));
    }

    /** Address of a style sheet or script. */
    public String asset(String name) {
        return assets.address(name);
    }

    /** As the page's head says it: mm or in. */
    public String units() {
        return inch ? "in" : "mm";
    }

    /** What a script sends with everything, as JSON. */
    public String headers() {
        return "{\"%s\":\"%s\"}".formatted(Doors.STAMP_HEADER, stamp);
    }
}
