package sheaf.desk;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.LocationProvider;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheaf.core.layout.Layout;
import sheaf.desk.outcome.ExitStatus;
import sheaf.forms.Pack;
import sheaf.samples.CommittedSamples;
import sheaf.scanner.SheetReader;

/** Which part may know which. The test stands here because only this module sees all others. */
@AnalyzeClasses(
    locations = ArchitectureTest.Modules.class,
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /** Where our own classes are; looking for them among all libraries would take long. */
  static final class Modules implements LocationProvider {
    @Override
    public Set<Location> get(Class<?> testClass) {
      return Stream.of(
              Layout.class, Pack.class, SheetReader.class, CommittedSamples.class, ExitStatus.class)
          .map(one -> Location.of(one.getProtectionDomain().getCodeSource().getLocation()))
          .collect(Collectors.toSet());
    }
  }

  /** Copies OpenCV's native libraries into a cache, since the system loads them from files only. */
  private static final String NATIVE_LIBRARIES = "sheaf.scanner.opencv.NativeLibraries";

  /** Measures reading against plain calls of OpenCV, and so makes them. */
  private static final String FLOOR = "sheaf.samples.Floor";

  /** Makes the pictures that the recogniser of digits learns from, by the hundred thousand. */
  private static final String TRAINING = "sheaf.samples.digit";

  @ArchTest
  static final ArchRule CORE_IS_PURE =
      noClasses()
          .that()
          .resideInAPackage("sheaf.core..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "sheaf.forms..",
              "sheaf.scanner..",
              "sheaf.samples..",
              "sheaf.desk..",
              "org.apache.pdfbox..",
              "org.opencv..",
              "org.bytedeco..",
              "com.google.zxing..",
              "com.fasterxml..",
              "java.awt..",
              "javax.imageio..",
              "java.nio.file..",
              "java.sql..",
              "java.net..")
          .because("the domain must be plain to read, and quick to test without any device");

  @ArchTest
  static final ArchRule FORMS_KNOW_ONLY_CORE =
      noClasses()
          .that()
          .resideInAPackage("sheaf.forms..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("sheaf.scanner..", "sheaf.samples..", "sheaf.desk..")
          .because("what is printed and what is read share the layouts in core and nothing else");

  @ArchTest
  static final ArchRule SCANNER_KNOWS_ONLY_CORE =
      noClasses()
          .that()
          .resideInAPackage("sheaf.scanner..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("sheaf.forms..", "sheaf.samples..", "sheaf.desk..")
          .because("what is printed and what is read share the layouts in core and nothing else");

  @ArchTest
  static final ArchRule NOTHING_KNOWS_THE_DESK =
      noClasses()
          .that()
          .resideOutsideOfPackage("sheaf.desk..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("sheaf.desk..")
          .because("the desk is what people touch; the rest must work without it");

  @ArchTest
  static final ArchRule ONLY_THE_SCANNER_SEES_OPENCV =
      noClasses()
          .that()
          .resideOutsideOfPackage("sheaf.scanner..")
          .and()
          .doNotHaveFullyQualifiedName(FLOOR)
          .and()
          .resideOutsideOfPackage(TRAINING)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.opencv..", "org.bytedeco..")
          .because("native memory is released in one module, by people who think of it");

  @ArchTest
  static final ArchRule ONLY_THE_DESK_TOUCHES_DATABASE_AND_NETWORK =
      noClasses()
          .that()
          .resideOutsideOfPackage("sheaf.desk..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.sql..",
              "javax.sql..",
              "org.sqlite..",
              "org.postgresql..",
              "org.flywaydb..",
              "java.net..")
          .because("the other modules turn values into values");

  @ArchTest
  static final ArchRule ONLY_THE_DESK_TOUCHES_THE_DISK =
      noClasses()
          .that()
          .resideOutsideOfPackages("sheaf.desk..", "sheaf.samples..")
          .and()
          .doNotHaveFullyQualifiedName(NATIVE_LIBRARIES)
          .should()
          .dependOnClassesThat(
              named(
                  "java\\.nio\\.file\\..*"
                      + "|java\\.nio\\.channels\\.FileChannel"
                      + "|java\\.io\\.(File|FileInputStream|FileOutputStream|RandomAccessFile)"))
          .because("the other modules turn bytes into values; the makers of samples write theirs");

  @ArchTest
  static final ArchRule ONLY_THE_STORE_SPEAKS_SQL =
      noClasses()
          .that()
          .resideOutsideOfPackage("sheaf.desk.store..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.sql..", "javax.sql..", "org.sqlite..", "org.postgresql..", "org.flywaydb..")
          .because("what is kept, and how, is decided in one place");

  @ArchTest
  static final ArchRule ONLY_THE_PROFILE_SPEAKS_TOML =
      noClasses()
          .that()
          .resideOutsideOfPackage("sheaf.desk.profile..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.tomlj..")
          .because("what a shop sets, and how it is written, is understood in one place");

  @ArchTest
  static final ArchRule ONLY_THE_COMMAND_LINE_PRINTS =
      noClasses()
          .that()
          .resideOutsideOfPackage("sheaf.desk.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .callMethod(System.class, "exit", int.class)
          .because("results go through one door, so that they can be tested and piped");

  @ArchTest
  static final ArchRule NO_PACKAGES_GO_IN_CIRCLES =
      slices()
          .matching("sheaf.(**)")
          .should()
          .beFreeOfCycles()
          .because("a package must be readable with only those below it");

  /** Rules over no classes would hold for nothing. */
  @ArchTest
  static void everyModuleIsLookedAt(JavaClasses all) {
    for (String root : List.of("core", "forms", "scanner", "samples", "desk")) {
      assertThat(all).anyMatch(one -> one.getPackageName().startsWith("sheaf." + root));
    }
  }

  private static DescribedPredicate<JavaClass> named(String pattern) {
    return DescribedPredicate.describe(
        "read or write files", HasName.Predicates.nameMatching(pattern)::test);
  }
}
