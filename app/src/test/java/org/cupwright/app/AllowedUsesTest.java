package org.cupwright.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Which package may use which: the table below <em>is</em> the structure of the project. A package that is not in it
 * fails.
 *
 * <p>A package's sub-packages belong to it. Every package may also use what is in {@link #EVERYWHERE}. Changing the
 * table needs a decision record (docs/decisions).
 */
class AllowedUsesTest {
    private static final String ROOT = "org.cupwright.";
    private static final Set<String> EVERYWHERE = Set.of("units", "policy", "message");
    private static final String ENGINE =
            "course finding green roll holelocation cupchange turf rotation round settingout formats";
    private static final String DESK = ENGINE + " app.storage app.session app.desk";
    private static final String ANSWERS = DESK + " app.people app.texts app.answers";
    private static final String DOOR = ANSWERS + " democourse app.maps app.sheets";

    /** package → what it may use besides itself and {@link #EVERYWHERE}. */
    private static final Map<String, String> ALLOWED = Map.ofEntries(
            Map.entry("units", ""),
            Map.entry("message", ""),
            Map.entry("policy", ""),
            Map.entry("course", ""),
            Map.entry("round", "course"),
            Map.entry("finding", "course"),
            Map.entry("green", "course finding"),
            Map.entry("settingout", "course green"),
            Map.entry("cupchange", "course"),
            Map.entry("formats", "course finding green"),
            Map.entry("roll", "course green"),
            Map.entry("holelocation", "course green roll"),
            Map.entry("turf", "course green cupchange"),
            Map.entry("rotation", "course green holelocation"),
            Map.entry("democourse", "course green cupchange turf"),
            Map.entry("app.storage", ENGINE),
            Map.entry("app.store", ENGINE + " app.storage"),
            Map.entry("app.people", ENGINE + " app.storage app.session"),
            Map.entry("app.session", ENGINE + " app.storage app.texts"),
            Map.entry("app.desk", ENGINE + " democourse app.storage app.session"),
            Map.entry("app.texts", ENGINE),
            Map.entry("app.answers", DESK + " app.people app.texts"),
            Map.entry("app.maps", "course finding green holelocation formats app.texts"),
            Map.entry("app.sheets", ANSWERS + " app.maps"),
            Map.entry("app.cli", DOOR),
            Map.entry("app.visit", DESK + " app.texts"),
            Map.entry("app.office", DOOR + " app.visit"),
            Map.entry("app.field", DOOR + " app.visit"),
            Map.entry("app.wiring", DOOR + " app.store app.visit app.cli app.office app.field"));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(place -> !place.contains("-tests.jar"))
            .importPackages("org.cupwright");

    @Test
    void bothModulesAreSeen() {
        Set<String> packages = packages();
        assertThat(packages).contains("units", "holelocation", "app.cli", "app.wiring");
    }

    @Test
    void everyPackageIsInTheTable() {
        assertThat(packages()).isSubsetOf(ALLOWED.keySet());
    }

    @TestFactory
    List<DynamicTest> everyPackageUsesOnlyWhatItMay() {
        return ALLOWED.keySet().stream()
                .sorted()
                .map(name -> DynamicTest.dynamicTest(name, () -> holds(name)))
                .toList();
    }

    /** Since every package keeps to its row, no circle in the table means none in the code. */
    @Test
    void theTableHasNoCircle() {
        Set<String> laid = new HashSet<>(EVERYWHERE);
        Set<String> left = new TreeSet<>(ALLOWED.keySet());
        left.removeAll(EVERYWHERE);
        boolean laying = true;
        while (laying) {
            laying = left.removeIf(name -> laid.containsAll(uses(name)) && laid.add(name));
        }
        assertThat(left).as("packages that stand in a circle, or on one").isEmpty();
    }

    @Test
    void theEngineIsPlainJava() {
        noClasses()
                .that(areIn(Set.of((ENGINE + " democourse").split(" ")), "the engine")
                        .or(areIn(EVERYWHERE, "its foundation")))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.springframework..",
                        "jakarta.servlet..",
                        "java.sql..",
                        "javax.sql..",
                        "java.io.File",
                        "java.nio.file..",
                        "org.apache.pdfbox..",
                        "java.net.http..",
                        "java.util.logging..")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.File")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callConstructor(java.util.Random.class)
                .check(CLASSES);
    }

    @Test
    void onlyTheStoreSpeaksSql() {
        noClasses()
                .that(areIn(others("app.store"), "every other package"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..", "org.postgresql..", "org.flywaydb..")
                .check(CLASSES);
    }

    /** The stores say what every database takes; what only one says stands in that one's package. */
    @Test
    void onlyADatabasesOwnPackageKnowsIt() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.cupwright.app.store.sqlite..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.sqlite..", "org.postgresql..", "org.flywaydb..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAPackage("org.cupwright.app.store")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.cupwright.app.store.sqlite..")
                .check(CLASSES);
    }

    @Test
    void springStaysAtTheEdges() {
        Set<String> springless =
                others("app.store", "app.people", "app.visit", "app.office", "app.field", "app.wiring");
        noClasses()
                .that(areIn(springless, "every other package"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.springframework..")
                .check(CLASSES);
    }

    /** The program works without the solver: whatever needs it asks by {@code rotation.exact}. */
    @Test
    void onlyTheSolversPackageSeesTheSolverLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.cupwright.rotation.solver")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.google.ortools..", "com.google.protobuf..", "com.sun.jna..")
                .check(CLASSES);
    }

    /** Package by package, without exception: no two use each other, by however long a way. */
    @Test
    void packagesUseEachOtherInOneDirection() {
        slices().assignedFrom(PACKAGE).should().beFreeOfCycles().check(CLASSES);
    }

    private static final SliceAssignment PACKAGE = new SliceAssignment() {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            return type.getPackageName().startsWith(ROOT)
                    ? SliceIdentifier.of(type.getPackageName())
                    : SliceIdentifier.ignore();
        }

        @Override
        public String getDescription() {
            return "a slice each";
        }
    };

    private static void holds(String name) {
        Set<String> mayUse = new HashSet<>(EVERYWHERE);
        mayUse.addAll(uses(name));
        mayUse.add(name);
        classes()
                .that(areIn(Set.of(name), name))
                .should()
                .onlyDependOnClassesThat(describe(
                        "are in " + new TreeSet<>(mayUse) + " or outside the project",
                        used -> !used.getPackageName().startsWith(ROOT) || mayUse.contains(packageOf(used))))
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    private static Set<String> uses(String name) {
        String row = ALLOWED.get(name);
        return row.isEmpty() ? Set.of() : Set.copyOf(Arrays.asList(row.split(" ")));
    }

    private static DescribedPredicate<JavaClass> areIn(Set<String> names, String called) {
        return describe("are in " + called, type -> names.contains(packageOf(type)));
    }

    private static Set<String> others(String... excepted) {
        Set<String> rest = new TreeSet<>(ALLOWED.keySet());
        rest.removeAll(Set.of(excepted));
        return rest;
    }

    private static Set<String> packages() {
        return CLASSES.stream().map(AllowedUsesTest::packageOf).collect(Collectors.toSet());
    }

    /** The row of the table a class belongs to: {@code rotation} for {@code org.cupwright.rotation.solver.X}. */
    private static String packageOf(JavaClass type) {
        String rest = type.getPackageName()
                .substring(Math.min(ROOT.length(), type.getPackageName().length()));
        String[] parts = rest.split("\\.", -1);
        return parts[0].equals("app") && parts.length > 1 ? parts[0] + "." + parts[1] : parts[0];
    }
}
