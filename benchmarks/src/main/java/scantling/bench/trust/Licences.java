package scantling.bench.trust;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Lists what is shipped with the program and under which licence, from the poms that Maven resolved: each jar's own, else its
 * parent's. What no pom tells stands there as not told.
 */
public final class Licences {
    private static final String OWN = "scantling";
    private static final String NOT_TOLD = "not told in its pom";

    private final Path repository;

    private Licences(Path repository) {
        this.repository = repository;
    }

    /** @param args folder of the jars, Maven's repository, the page to write */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[2]), page(Path.of(args[0]), Path.of(args[1])), StandardCharsets.UTF_8);
    }

    /** The page as Markdown. */
    static String page(Path jars, Path repository) throws IOException {
        StringBuilder page = new StringBuilder("""
            # Licences

            What is shipped with the program, from the poms of the jars themselves. Made by
            `java -cp "$CP" scantling.bench.trust.Licences app/target/lib ~/.m2/repository docs/licences.md`.

            | library | licence |
            | --- | --- |
            """);
        for (String name : names(jars)) {
            page.append("| %s | %s |%n".formatted(name, new Licences(repository).licence(name)));
        }
        return page.toString();
    }

    /** File names of the jars without their ending, those of the program itself left out. */
    static List<String> names(Path jars) throws IOException {
        try (Stream<Path> files = Files.list(jars)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(".jar") && !name.startsWith(OWN))
                    .map(name -> name.substring(0, name.length() - ".jar".length()))
                    .sorted()
                    .toList();
        }
    }

    private String licence(String jar) throws IOException {
        Optional<Path> pom = findPom(jar);
        for (int up = 0; up < 8 && pom.isPresent(); up++) {
            Element project = read(pom.get()).getDocumentElement();
            List<String> told = licences(project);
            if (!told.isEmpty()) {
                return String.join("; ", told);
            }
            pom = parent(project);
        }
        return NOT_TOLD;
    }

    /** A jar for one system is named by it; its pom is not. */
    private Optional<Path> findPom(String jar) throws IOException {
        try (Stream<Path> all = Files.find(repository, 12, (path, attributes) -> path.endsWith(jar + ".jar"))) {
            return all.flatMap(found -> Optional.ofNullable(found.getParent()).stream())
                    .flatMap(folder -> poms(folder).stream())
                    .sorted()
                    .findFirst();
        }
    }

    private static List<Path> poms(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".pom")).toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private static Document read(Path pom) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(pom.toFile());
        } catch (ParserConfigurationException | SAXException unreadable) {
            throw new IOException(pom.toString(), unreadable);
        }
    }

    private static List<String> licences(Element project) {
        List<String> names = new ArrayList<>();
        child(project, "licenses").ifPresent(all -> {
            for (Node each = all.getFirstChild(); each != null; each = each.getNextSibling()) {
                if (each instanceof Element one) {
                    child(one, "name")
                            .map(name -> name.getTextContent().strip().replaceAll("\\s+", " "))
                            .ifPresent(names::add);
                }
            }
        });
        return names;
    }

    private Optional<Path> parent(Element project) {
        return child(project, "parent").flatMap(parent -> {
            String group = text(parent, "groupId").replace('.', '/');
            String artifact = text(parent, "artifactId");
            String version = text(parent, "version");
            Path pom = repository
                    .resolve(group)
                    .resolve(artifact)
                    .resolve(version)
                    .resolve(artifact + "-" + version + ".pom");
            return Optional.of(pom).filter(Files::exists);
        });
    }

    private static String text(Element of, String name) {
        return child(of, name).map(each -> each.getTextContent().strip()).orElse("");
    }

    private static Optional<Element> child(Element of, String name) {
        for (Node each = of.getFirstChild(); each != null; each = each.getNextSibling()) {
            if (each instanceof Element one && one.getTagName().equals(name)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
