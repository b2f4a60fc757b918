package scantling.drawing;

import java.util.List;

/**
 * Writes a drawing as SVG, canonically: attributes in one order, numbers with two decimals at most and a full stop as
 * decimal sign wherever it runs; so the same drawing is the same text.
 */
final class SvgWriter {
    private static final int HUNDREDTHS = 100;

    private final StringBuilder out = new StringBuilder();

    /** The whole of it. @param unit of its width and height: mm for paper, nothing for a screen */
    String write(Drawing drawing, String unit) {
        double scale = unit.isEmpty() ? 1 : Scale.UNITS_PER_MM;
        out.append("<svg");
        put("aria-label", drawing.title());
        put("class", "draw");
        put("color", "#1D1A16");
        put("font-family", "National Park, sans-serif");
        put("height", number(drawing.height() / scale) + unit);
        put("role", "img");
        // said once: a drawing has thousands of lines
        put("stroke-linejoin", "round");
        put(
                "viewBox",
                String.join(
                        " ",
                        number(drawing.left()),
                        number(drawing.top()),
                        number(drawing.width()),
                        number(drawing.height())));
        put("width", number(drawing.width() / scale) + unit);
        put("xmlns", "http://www.w3.org/2000/svg");
        out.append('>');
        drawing.marks().forEach(this::mark);
        return out.append("</svg>").toString();
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Line line) {
            line(line, "");
        } else if (mark instanceof Mark.Circle circle) {
            circle(circle);
        } else if (mark instanceof Mark.Words words) {
            words(words);
        } else if (mark instanceof Mark.Figure figure) {
            figure(figure);
        }
    }

    private void line(Mark.Line line, String style) {
        List<Spot> spots = line.spots();
        boolean straight = spots.size() == 2 && !line.closed();
        if (straight) {
            out.append("<line");
            put("x1", spots.get(0).x());
            put("x2", spots.get(1).x());
            put("y1", spots.get(0).y());
            put("y2", spots.get(1).y());
        } else {
            out.append(line.closed() ? "<polygon" : "<polyline");
            put("fill", line.hides() ? "#fff" : "none");
            out.append(" points=\"");
            for (int i = 0; i < spots.size(); i++) {
                out.append(i == 0 ? "" : " ").append(number(spots.get(i).x())).append(',');
                out.append(number(spots.get(i).y()));
            }
            out.append('"');
        }
        put("class", line.hides() ? "sheetfill" : style);
        pen(line.pen());
        out.append("/>");
    }

    private void circle(Mark.Circle circle) {
        out.append("<circle");
        put("class", "sheetfill");
        put("cx", circle.centre().x());
        put("cy", circle.centre().y());
        put("fill", "#fff");
        put("r", circle.radius());
        pen(circle.pen());
        out.append("/>");
    }

    private void words(Mark.Words words) {
        out.append("<text");
        put("fill", "currentColor");
        put("font-size", words.size());
        put("font-weight", words.strong() ? "500" : "");
        put("text-anchor", words.anchor().word());
        put("x", words.spot().x());
        put("y", words.spot().y());
        out.append('>');
        escaped(words.words());
        out.append("</text>");
    }

    private void figure(Mark.Figure figure) {
        out.append("<g");
        put("class", "n " + figure.origin().style());
        put("data-path", figure.path().orElse(""));
        if (figure.turned()) {
            String about =
                    number(figure.spot().x()) + " " + number(figure.spot().y());
            put("transform", "rotate(-90 " + about + ")");
        }
        out.append('>');
        words(figure.words());
        figure.rest().ifPresent(this::words);
        line(figure.under(), "u");
        out.append("</g>");
    }

    private void pen(Mark.Pen pen) {
        put("stroke", "currentColor");
        if (!pen.dash().isEmpty()) {
            put(
                    "stroke-dasharray",
                    number(pen.dash().get(0)) + " " + number(pen.dash().get(1)));
        }
        put("stroke-width", pen.weight());
    }

    private void put(String key, double value) {
        put(key, number(value));
    }

    /** An attribute; nothing when it says nothing. */
    private void put(String key, String value) {
        if (!value.isEmpty()) {
            out.append(' ').append(key).append("=\"");
            escaped(value);
            out.append('"');
        }
    }

    private void escaped(String raw) {
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
    }

    /** A number with two decimals at most, half away from zero. */
    static String number(double value) {
        long hundredths = Math.round(Math.abs(value) * HUNDREDTHS);
        long whole = hundredths / HUNDREDTHS;
        long rest = hundredths % HUNDREDTHS;
        String sign = value < 0 && hundredths > 0 ? "-" : "";
        if (rest == 0) {
            return sign + whole;
        }
        return sign + whole + "." + (rest % 10 == 0 ? rest / 10 : (rest < 10 ? "0" : "") + rest);
    }
}
