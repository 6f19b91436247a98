package tarewright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The floor plan: what stands where, what may use what, and what the core keeps clear of. */
@AnalyzeClasses(packages = "tarewright", importOptions = ImportOption.DoNotIncludeTests.class)
class FloorsTest {
    /** Lowest first. A class may use its own floor and those before it. */
    private static final List<String> FLOORS = List.of("text", "finding", "exact", "quantity", "derivation", "chemistry",
            "safety", "tables",
            "setting", "procedure.syntax", "procedure.expression", "procedure.declare", "procedure.resolve", "procedure.bench",
            "procedure.recipe", "procedure.prepare",
                    "procedure.check", "wording",
            "document", "print", "term", "command");
    private static final String[] CORE = packages("exact", "quantity", "derivation", "chemistry", "safety");
    /** Where files are read or written, and the machine's clock and temporary places are known. */
    private static final String[] OUTSIDE = packages("text", "tables", "wording", "print", "term", "command");

    private static String[] packages(String... floors) {
        return Stream.of(floors).map(FloorsTest::within).toArray(String[]::new);
    }

    private static String within(String floor) {
        return "tarewright." + floor + "..";
    }

    @ArchTest
    static void everyClassHasAFloor(JavaClasses all) {
        classes().should().resideInAnyPackage(packages(FLOORS.toArray(String[]::new))).check(all);
    }

    @ArchTest
    static void nothingUsesAFloorAboveIt(JavaClasses all) {
        for (int i = 0; i < FLOORS.size() - 1; i++) {
            String[] above = packages(FLOORS.subList(i + 1, FLOORS.size()).toArray(String[]::new));
            noClasses().that().resideInAPackage(within(FLOORS.get(i))).should().dependOnClassesThat().resideInAnyPackage(above)
                    .allowEmptyShould(true).check(all);
        }
    }

    @ArchTest
    static final ArchRule NO_PACKAGE_CYCLES = slices().matching("tarewright.(**)").should().beFreeOfCycles()
            .allowEmptyShould(true);

    /** {@code java.util} without its readers of files and streams, its clock, its locale-dependent words. */
    @ArchTest
    static final ArchRule CORE_IS_PURE = classes().that().resideInAnyPackage(CORE).should().onlyDependOnClassesThat(
            resideInAnyPackage(CORE).or(resideInAnyPackage("java.lang", "java.lang.invoke", "java.lang.runtime", "java.math",
                    "java.util",
                    "java.util.function", "java.util.regex", "java.util.stream"))).allowEmptyShould(true);

    @ArchTest
    static final ArchRule CORE_KNOWS_NO_MACHINE = noClasses().that().resideInAnyPackage(CORE).should().dependOnClassesThat()
            .haveNameMatching("java\\.util\\.(Date|Calendar|GregorianCalendar|TimeZone|Scanner|Formatter|Properties|"
                    + "ResourceBundle|Random|Timer|UUID)")
            .orShould().accessClassesThat().belongToAnyOf(Runtime.class, ProcessBuilder.class, Thread.class, ClassLoader.class)
            .orShould().callMethod(System.class, "getProperty", String.class)
            .orShould().callMethod(System.class, "getenv", String.class)
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule SYNTAX_KNOWS_TEXT_AND_FINDINGS = classes().that().resideInAPackage(within("procedure.syntax")).should()
            .onlyDependOnClassesThat(resideInAnyPackage(packages("text", "finding", "procedure.syntax"))
                    .or(resideInAnyPackage("java..", "org.commonmark.."))).allowEmptyShould(true);

    @ArchTest
    static final ArchRule DOCUMENT_IS_DATA = classes().that().resideInAPackage(within("document")).and().areRecords()
            .and().arePublic().should().onlyDependOnClassesThat(resideInAPackage(within("document")).or(resideInAnyPackage("java..")))
                    .allowEmptyShould(true);

    @ArchTest
    static void eachLibraryShowsInItsPlaceOnly(JavaClasses all) {
        shows("org.commonmark..", "procedure.syntax").check(all);
        shows("com.fasterxml.jackson..", "tables", "term", "command").check(all);
        shows("freemarker..", "print").check(all);
        shows("com.openhtmltopdf..", "print").check(all);
        shows("org.apache.pdfbox..", "print").check(all);
        shows("org.apache.fontbox..", "print").check(all);
        shows("org.apache.poi..", "print").check(all);
        shows("org.openxmlformats..", "print").check(all);
        shows("org.apache.xmlbeans..", "print").check(all);
        shows("org.apache.batik..", "print").check(all);
        shows("picocli..", "command").check(all);
    }

    private static ArchRule shows(String library, String... floors) {
        return noClasses().that().resideOutsideOfPackages(packages(floors)).should()
                .dependOnClassesThat(resideInAPackage(library))
                .allowEmptyShould(true);
    }

    /** A library that is not named above is not used at all, so that a new one is a decision. */
    @ArchTest
    static final ArchRule NO_OTHER_LIBRARY = classes().should().onlyDependOnClassesThat(resideInAnyPackage("tarewright..",
            "java..", "javax.xml..", "javax.imageio..",
            "org.w3c.dom..", "org.xml.sax..", "org.commonmark..", "com.fasterxml.jackson..", "freemarker..",
                    "com.openhtmltopdf..",
            "org.apache.pdfbox..", "org.apache.fontbox..", "org.apache.xmpbox..", "org.apache.poi..", "org.openxmlformats..",
            "org.apache.xmlbeans..", "org.apache.batik..", "picocli.."));

    @ArchTest
    static final ArchRule FILES_ARE_THE_OUTSIDE = noClasses().that().resideOutsideOfPackages(OUTSIDE).should()
            .dependOnClassesThat().resideInAnyPackage("java.io..", "java.nio..", "java.net..").allowEmptyShould(true);

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_READS_THE_CLOCK = noClasses().that().resideOutsideOfPackage(within("command")).should()
            .callMethod(System.class, "currentTimeMillis").orShould().callMethod(System.class, "nanoTime")
            .orShould().callMethodWhere(target(owner(resideInAPackage("java.time")))
                    .and(target(nameMatching("now|system.*|tick.*"))));

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_SPEAKS = noClasses().that().resideOutsideOfPackage(within("command")).should()
            .accessField(System.class, "out").orShould().accessField(System.class, "err").orShould().callMethod(System.class,
                    "exit", int.class)
            .orShould().callMethod(Throwable.class, "printStackTrace");

    /** What a machine's language changes without being asked. */
    @ArchTest
    static final ArchRule NO_DEFAULT_LOCALE = noClasses().should().callMethod(String.class, "format", String.class,
            Object[].class)
            .orShould().callMethod(String.class, "formatted", Object[].class)
            .orShould().callMethod(String.class, "toLowerCase").orShould().callMethod(String.class, "toUpperCase")
            .orShould().callMethod(Locale.class, "getDefault");

    @ArchTest
    static final ArchRule NO_STATIC_STATE = fields().that().areStatic().should().beFinal();
}
