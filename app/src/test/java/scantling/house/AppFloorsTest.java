package scantling.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The upper floors: the shop's memory, and above it two ways in that do not know each other. */
class AppFloorsTest {
    private final JavaClasses upstairs = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("scantling.shop", "scantling.web", "scantling.cli");

    @Test
    void theShopKnowsNeitherWayIn() {
        noClasses()
                .that()
                .resideInAPackage("scantling.shop..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("scantling.web..", "scantling.cli..", "io.javalin..", "picocli..")
                .because("pages and commands ask the shop, never the other way round")
                .check(upstairs);
    }

    @Test
    void thePagesDoNotKnowTheCommands() {
        noClasses()
                .that()
                .resideInAPackage("scantling.web..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("scantling.cli..")
                .because("one command starts the pages; the pages start no command")
                .allowEmptyShould(true)
                .check(upstairs);
    }

    @Test
    void theCommandsKnowOnlyTheFrontDoorOfThePages() {
        noClasses()
                .that()
                .resideInAPackage("scantling.cli..")
                .and()
                .doNotHaveSimpleName("ServeCommand")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("scantling.web..")
                .because("only the command that opens the pages has business with them")
                .check(upstairs);
    }

    @Test
    void onlyTheShopSpeaksToTheDatabase() {
        noClasses()
                .that()
                .resideOutsideOfPackage("scantling.shop..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.flywaydb..", "org.sqlite..")
                .because("what is written is written by acts, through one door")
                .check(upstairs);
    }
}
