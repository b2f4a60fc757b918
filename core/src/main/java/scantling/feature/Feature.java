package scantling.feature;

import java.util.List;
import java.util.Optional;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Wood taken from a part, or left standing on it, as the box it takes up, measured from the part's marks.
 *
 * @param path its name, unique in the piece: {@code left end / top rail to front stile / slot in top rail}
 * @param part path of the part
 * @param owner path of the joint or fitting that asks for it
 * @param kind what it is
 * @param surface the surface it is worked from
 * @param along from the near end
 * @param across from the face edge
 * @param through from the face side
 * @param radius of a hole, of the ends of a slot, or of the corners a bit leaves; none where corners are square
 * @param taper how its sides slope across the part; none where they are straight
 * @param aim how the tool goes in where it leans; none where it goes in square
 * @param setting how the machine stands for it
 */
public record Feature(
        String path,
        String part,
        String owner,
        Kind kind,
        Surface surface,
        Range along,
        Range across,
        Range through,
        Optional<Dim> radius,
        Optional<Taper> taper,
        Optional<Aim> aim,
        Setting setting) {
    /** One made square, with straight sides. */
    public Feature(
            String path,
            String part,
            String owner,
            Kind kind,
            Surface surface,
            Range along,
            Range across,
            Range through,
            Optional<Dim> radius,
            Setting setting) {
        this(
                path,
                part,
                owner,
                kind,
                surface,
                along,
                across,
                through,
                radius,
                Optional.empty(),
                Optional.empty(),
                setting);
    }

    /** What a feature is. */
    public enum Kind {
        /** A round hole, as deep as its range from its surface. */
        HOLE("hole"),
        /** A slot for a biscuit. */
        SLOT("slot"),
        /** A mortise for a tenon, loose or not. */
        MORTISE("mortise"),
        /** A tenon left standing. */
        TENON("tenon"),
        /** A channel across the grain. */
        DADO("dado"),
        /** A channel along the grain. */
        GROOVE("groove"),
        /** A step along an edge. */
        RABBET("rabbet"),
        /** A tongue left standing. */
        TONGUE("tongue"),
        /** A piece taken out of an edge or a corner. */
        NOTCH("notch"),
        /** A socket between pins or tails. */
        SOCKET("socket"),
        /** A tail, pin or finger left standing. */
        PIN("pin"),
        /** An end or edge cut at an angle. */
        MITRE("mitre"),
        /** A shallow bed for a plate, a leaf or a washer. */
        RECESS("recess"),
        /** Where a slanting shoulder is sawn round a part. */
        SHOULDER("shoulder");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The trade's word for it. */
        public String words() {
            return words;
        }
    }

    /** How deep it goes from the surface it is worked from; along the tool where that leans. */
    public Dim depth() {
        return aim.map(Aim::depth).orElseGet(this::square);
    }

    private Dim square() {
        return switch (surface) {
            case FACE_SIDE, BACK_SIDE -> through.size();
            case FACE_EDGE, BACK_EDGE -> across.size();
            case NEAR_END, FAR_END -> along.size();
        };
    }

    /** Its middle from the near end, where a tool that leans enters. */
    public Dim middleAlong() {
        return aim.map(Aim::along).orElseGet(along::middle);
    }

    /** The same from the face edge. */
    public Dim middleAcross() {
        return aim.map(Aim::across).orElseGet(across::middle);
    }

    /** The same from the face side. */
    public Dim middleThrough() {
        return aim.map(Aim::through).orElseGet(through::middle);
    }

    /** Its two ranges over the surface it is worked from: along first, across before through. */
    public List<Range> inPlane() {
        return switch (surface) {
            case FACE_SIDE, BACK_SIDE -> List.of(along, across);
            case FACE_EDGE, BACK_EDGE -> List.of(along, through);
            case NEAR_END, FAR_END -> List.of(across, through);
        };
    }

    /** Whether wood is left standing rather than taken away. */
    public boolean isLeft() {
        return kind == Kind.TENON || kind == Kind.TONGUE || kind == Kind.PIN;
    }

    /** Across the part where it is narrowest. */
    public Range acrossNarrow() {
        return taper.map(slope -> new Range(
                        across.from().plus(slope.nearer()), across.to().minus(slope.farther())))
                .orElse(across);
    }

    /** Where it is in the piece, as the part stands before any turning. @param of the part it is on */
    public Box inSpace(Part of) {
        Box box = placed(of.box(), of.box(), of.lie().nearEnd(), along);
        box = placed(box, of.box(), of.lie().faceEdge(), across);
        return placed(box, of.box(), of.lie().faceSide(), through);
    }

    /** Lays one range into a box, from the side of the whole that it is measured from. */
    private static Box placed(Box box, Box whole, Side mark, Range range) {
        Dim plane = whole.plane(mark);
        Dim nearer = mark.isFar() ? plane.minus(range.from()) : plane.plus(range.from());
        Dim farther = mark.isFar() ? plane.minus(range.to()) : plane.plus(range.to());
        return box.with(mark, nearer).with(mark.opposite(), farther);
    }

    /** The range that lies along one direction of the piece. @param of the part it is on */
    public Range along(Axis axis, Part of) {
        if (axis == of.lie().length()) {
            return along;
        }
        return axis == of.lie().width() ? across : through;
    }
}
