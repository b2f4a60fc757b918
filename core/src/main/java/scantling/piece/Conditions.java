package scantling.piece;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Span;

/**
 * What the maker says of the world the piece is made in and goes to, and of findings that are taken as they are.
 *
 * @param home the air it will stand in
 * @param shop the air it is made in
 * @param moisture moisture content measured in the wood, % of the dry mass, by the name of the material; under
 *     {@link #ALL} for every wood that is not named
 * @param sawn how its boards were sawn, by the name of the material: flat, quarter or mixed
 * @param accepted reasons by the name of the finding: {@code top / panel / sag}
 */
public record Conditions(
        Optional<Home> home,
        Optional<Home> shop,
        Map<String, Double> moisture,
        Map<String, String> sawn,
        Map<String, Reason> accepted) {
    /** Nothing was said. */
    public static final Conditions NONE =
            new Conditions(Optional.empty(), Optional.empty(), Map.of(), Map.of(), Map.of());

    /** Stands for every wood. */
    public static final String ALL = "";

    /** Takes its own copies, in the order given. */
    public Conditions {
        moisture = Collections.unmodifiableMap(new LinkedHashMap<>(moisture));
        sawn = Map.copyOf(sawn);
        accepted = Collections.unmodifiableMap(new LinkedHashMap<>(accepted));
    }

    /**
     * The air of a home: by the name of a tabulated one, or by its own numbers.
     *
     * @param name of a tabulated climate; empty when it has its own numbers
     * @param celsius temperature, January first; one for the whole year or twelve
     * @param humidity relative humidity in %, likewise
     * @param span where it was said
     */
    public record Home(String name, List<Double> celsius, List<Double> humidity, Span span) {
        /** Takes its own copies. */
        public Home {
            celsius = List.copyOf(celsius);
            humidity = List.copyOf(humidity);
        }
    }

    /** Why a finding is taken as it is. @param span where it was said */
    public record Reason(String words, Span span) {}

    /** Measured moisture content of a material, %. */
    public Optional<Double> findMoisture(String material) {
        return Optional.ofNullable(moisture.get(material)).or(() -> Optional.ofNullable(moisture.get(ALL)));
    }
}
