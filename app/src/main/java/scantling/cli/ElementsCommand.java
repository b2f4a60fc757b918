package scantling.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.piece.Language;
import scantling.piece.LanguageGuide;
import scantling.piece.Shape;
import scantling.piece.Spelling;

/** Tells what a piece may be built of. */
@Command(
        name = "elements",
        mixinStandardHelpOptions = true,
        description = "Tell what a piece may be built of: every element, every field, with an example.")
final class ElementsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..1", paramLabel = "ELEMENT", description = "Only this one.")
    private Optional<String> element = Optional.empty();

    @Override
    public Integer call() {
        String page = element.map(ElementsCommand::only)
                .map(LanguageGuide::markdown)
                .orElseGet(() -> LanguageGuide.page(Workbench.LANGUAGE));
        spec.commandLine().getOut().println(page);
        return Exit.WELL;
    }

    private static Language only(String key) {
        return Workbench.LANGUAGE
                .find(key)
                .map(shape -> new Language(List.of(shape)))
                .orElseThrow(() -> new Failure("No element is called \"%s\".%s"
                        .formatted(
                                key,
                                Spelling.maybe(
                                        key,
                                        Workbench.LANGUAGE.elements().stream()
                                                .map(Shape::key)
                                                .toList()))));
    }
}
