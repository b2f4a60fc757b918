package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.drawing.Drawing;
import scantling.drawing.HatchLegend;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** {@code -Dgolden=true} draws the pictures of the guide anew; look at them before committing. */
class GuidePicturesTest {
    private static final Path FOLDER = Path.of(System.getProperty("scantling.root", ".."), "docs", "guide", "pictures");

    private static Map<String, Drawing> pictures() throws IOException {
        try (InputStream in = Starters.open("wall-shelf")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Piece piece = PieceReader.read(text, Construction.language(), StandardWoods.standard())
                    .piece()
                    .orElseThrow();
            PacketContent content = Packet.of(
                            Planner.plan(piece, BenchLog.EMPTY, Shop.usual()).plan(), LengthFormat.of(piece.unit()))
                    .content();
            Drawings drawings = Drawings.of(content);
            Map<String, Drawing> all = new LinkedHashMap<>();
            all.put("front.svg", drawings.front());
            all.put("apart.svg", drawings.exploded().get(0));
            all.put("part.svg", drawings.parts().get(0));
            all.put("hatches.svg", HatchLegend.all());
            return all;
        }
    }

    @Test
    void everyPictureOfTheGuideIsAsTheProgramDrawsItNow() throws IOException {
        Map<String, Drawing> pictures = pictures();
        if (Boolean.getBoolean("golden")) {
            Files.createDirectories(FOLDER);
            for (Map.Entry<String, Drawing> picture : pictures.entrySet()) {
                Files.writeString(
                        FOLDER.resolve(picture.getKey()), picture.getValue().screenSvg());
            }
        }
        Set<String> there = new TreeSet<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            files.forEach(file -> there.add(String.valueOf(file.getFileName())));
        }
        assertEquals(new TreeSet<>(pictures.keySet()), there);
        for (Map.Entry<String, Drawing> picture : pictures.entrySet()) {
            assertEquals(
                    Files.readString(FOLDER.resolve(picture.getKey())),
                    picture.getValue().screenSvg(),
                    picture.getKey());
        }
    }
}
