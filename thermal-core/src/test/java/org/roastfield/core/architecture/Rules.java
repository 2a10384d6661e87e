package org.roastfield.core.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.Timer;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;

/** The rules that main classes keep. */
final class Rules {

  /** Methods of {@code Math} whose last bit may differ from one JVM to the next. */
  private static final Set<String> INEXACT =
      Set.of(
          "exp",
          "expm1",
          "log",
          "log10",
          "log1p",
          "pow",
          "sin",
          "cos",
          "tan",
          "asin",
          "acos",
          "atan",
          "atan2",
          "sinh",
          "cosh",
          "tanh",
          "cbrt",
          "hypot",
          "toRadians",
          "toDegrees",
          "random");

  private Rules() {}

  static ArchRule onlyReproducibleMathematics() {
    return noClasses()
        .should()
        .callMethodWhere(
            DescribedPredicate.describe(
                "target is a method of Math that may round differently",
                call -> isInexact(call.getTarget())))
        .because("results must be the same on every JVM; StrictMath is");
  }

  private static boolean isInexact(AccessTarget target) {
    return target.getOwner().isEquivalentTo(Math.class) && INEXACT.contains(target.getName());
  }

  static ArchRule noConsole() {
    return noClasses()
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .accessField(System.class, "in");
  }

  static ArchRule noClock() {
    return noClasses()
        .should()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .dependOnClassesThat()
        .resideInAPackage("java.time..");
  }

  /** A caller's executor may be used; none is made, and nothing runs on a pool of the JVM. */
  static ArchRule noThreads() {
    return noClasses()
        .should()
        .dependOnClassesThat()
        .areAssignableTo(Thread.class)
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(Executors.class, Timer.class)
        .orShould()
        .callConstructorWhere(
            DescribedPredicate.describe(
                "makes an executor", call -> call.getTargetOwner().isAssignableTo(Executor.class)))
        .orShould()
        .callMethodWhere(
            DescribedPredicate.describe(
                "runs on a pool of the JVM", call -> usesCommonPool(call.getTarget())));
  }

  static ArchRule concurrencyOnlyInEnsembles() {
    return noClasses()
        .that()
        .resideOutsideOfPackage("org.roastfield.core.ensemble..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("java.util.concurrent..");
  }

  private static boolean usesCommonPool(AccessTarget.MethodCallTarget target) {
    boolean parallel = Set.of("parallel", "parallelStream").contains(target.getName());
    boolean async =
        target.getOwner().isEquivalentTo(CompletableFuture.class)
            && target.getName().endsWith("Async");
    return parallel || (async && !takesExecutor(target));
  }

  private static boolean takesExecutor(AccessTarget.MethodCallTarget target) {
    return target.getRawParameterTypes().stream()
        .anyMatch(type -> type.isEquivalentTo(Executor.class));
  }

  static ArchRule noFilesAndNoLogging() {
    return noClasses()
        .should()
        .dependOnClassesThat(
            DescribedPredicate.describe(
                "do input, output or logging",
                type ->
                    isIn(type, "java.io")
                        || isIn(type, "java.nio")
                        || isIn(type, "java.net")
                        || type.isEquivalentTo(System.Logger.class)
                        || isIn(type, "java.util.logging")
                        || isIn(type, "org.slf4j")));
  }

  private static boolean isIn(JavaClass type, String packageName) {
    boolean inside =
        type.getPackageName().equals(packageName)
            || type.getPackageName().startsWith(packageName + ".");
    return inside && !type.getName().equals("java.io.Serializable");
  }

  static ArchRule noMutableStatics() {
    return fields()
        .that()
        .areStatic()
        .and()
        .doNotHaveName("$assertionsDisabled")
        .and(
            DescribedPredicate.describe(
                "are written in the source",
                (JavaField field) -> !field.getModifiers().contains(JavaModifier.SYNTHETIC)))
        .should()
        .beFinal();
  }

  static ArchRule noArraysInRecords() {
    return classes()
        .that()
        .areRecords()
        .should(
            new ArchCondition<>("have no array component") {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                for (JavaField field : type.getFields()) {
                  boolean component = !field.getModifiers().contains(JavaModifier.STATIC);
                  if (component && field.getRawType().isArray()) {
                    events.add(SimpleConditionEvent.violated(field, field.getFullName()));
                  }
                }
              }
            })
        .allowEmptyShould(true);
  }

  static ArchRule noBeanNames() {
    return methods()
        .should()
        .haveNameNotMatching("(set|get)[A-Z].*")
        .because("accessors are bare nouns and nothing public is set");
  }
}
