package longpoint;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Who may import whom. The table is the one in DEVELOPERS.md; there is no ignore list. */
@Execution(ExecutionMode.CONCURRENT)
class PackageRulesTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("longpoint");

  private static final List<String> STAGES =
      List.of("wording", "geometry", "units", "plan", "surface", "framing", "deck", "field");

  /** Package to the packages of ours it may use, besides itself and {@code stop}. */
  private static final Map<String, List<String>> OURS = new TreeMap<>();

  /** Package to the outside packages it may use, besides the language's own. */
  private static final Map<String, List<String>> OUTSIDE = new TreeMap<>();

  static {
    allow("stop", List.of());
    allow("geometry", List.of(), "org.locationtech.jts");
    allow("wording", List.of());
    allow("units", STAGES.subList(0, 1));
    allow("plan", STAGES.subList(0, 3));
    allow("surface", STAGES.subList(0, 4), "org.locationtech.jts");
    allow("framing", STAGES.subList(0, 5));
    allow("deck", STAGES.subList(0, 6));
    allow("field", STAGES.subList(0, 7), "org.ojalgo", "com.google.ortools", "org.ejml");
    allow("drawing", List.of("geometry"));
    allow("sheets", with(STAGES, "drawing"));
    allow("pipeline", with(STAGES, "drawing", "sheets"));
    allow(
        "export",
        List.of("drawing", "geometry", "units", "wording"),
        "org.apache.batik",
        "org.w3c",
        "org.xml",
        "org.apache.pdfbox",
        "org.apache.fontbox",
        "org.dhatim",
        "jakarta.mail",
        "org.eclipse.angus",
        "com.fasterxml.jackson");
    allow(
        "planfile",
        List.of("plan", "geometry", "units", "wording"),
        "com.fasterxml.jackson",
        "com.networknt");
    allow(
        "packet",
        with(STAGES, "drawing", "sheets", "pipeline", "export", "planfile"),
        "com.fasterxml.jackson");
    allow("tracing", List.of("plan", "geometry", "units", "wording"));
    allow("trusslist", List.of("plan", "units", "wording"));
    allow("picture", List.of("plan"), "java.awt", "org.w3c", "org.apache.pdfbox");
    allow("editor", List.of("plan", "geometry", "units", "wording"));
    allow(
        "desktop",
        with(
            STAGES,
            "drawing",
            "sheets",
            "pipeline",
            "export",
            "packet",
            "planfile",
            "tracing",
            "trusslist",
            "picture",
            "editor"),
        "javax.swing",
        "javax.print",
        "java.awt",
        "javax.accessibility",
        "com.formdev",
        "net.miginfocom",
        "org.apache.batik",
        "org.w3c");
    allow(
        "cli",
        with(
            STAGES,
            "drawing",
            "sheets",
            "pipeline",
            "export",
            "packet",
            "planfile",
            "tracing",
            "trusslist"),
        "picocli");
  }

  private static void allow(String of, List<String> ours, String... outside) {
    OURS.put(of, ours);
    OUTSIDE.put(of, List.of(outside));
  }

  private static List<String> with(List<String> some, String... more) {
    return Stream.concat(some.stream(), Stream.of(more)).toList();
  }

  @TestFactory
  Stream<DynamicTest> everyPackageImportsOnlyWhatTheTableAllows() {
    return OURS.keySet().stream().map(p -> DynamicTest.dynamicTest(p, () -> check(p)));
  }

  private static void check(String name) {
    String[] allowed =
        Stream.of(
                Stream.of("longpoint." + name + "..", "longpoint.stop.."),
                OURS.get(name).stream().map(p -> "longpoint." + p + ".."),
                OUTSIDE.get(name).stream().map(p -> p + ".."),
                Stream.of(
                    "java.lang..", "java.util..", "java.math..", "java.text..", "java.time.."),
                Stream.of("java.io..", "java.nio..", "java.net..", "javax.xml.."),
                Stream.of("java.security..", "javax.imageio.."))
            .flatMap(s -> s)
            .toArray(String[]::new);
    classes()
        .that(resideInAPackage("longpoint." + name + ".."))
        .should()
        .onlyDependOnClassesThat(resideInAnyPackage(allowed).or(PRIMITIVE))
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  private static final com.tngtech.archunit.base.DescribedPredicate<JavaClass> PRIMITIVE =
      com.tngtech.archunit.base.DescribedPredicate.describe(
          "primitives and arrays of what is allowed",
          c -> c.isPrimitive() || (c.isArray() && c.getBaseComponentType().isPrimitive()));

  /** What is printed goes through the command that was given, never past it. */
  @Test
  void onlyTheEntryUsesTheStandardStreams() {
    noClasses()
        .that()
        .doNotBelongToAnyOf(Longpoint.class)
        .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
        .check(CLASSES);
  }

  @Test
  void everyPackageStandsInTheTable() {
    Assertions.assertThat(
            CLASSES.stream()
                .map(JavaClass::getPackageName)
                .filter(p -> !p.equals("longpoint"))
                .map(p -> p.split("\\.")[1])
                .distinct())
        .isSubsetOf(OURS.keySet());
  }
}
