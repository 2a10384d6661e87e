package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.net.URL;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Turns;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * Heat and water over every law, wrap, turn and kind of stage in any order: what the integration
 * keeps account of, and what the laws come to over the computed temperatures.
 */
class AnyCookPropertiesTest {

  private static final double ROUND_OFF = 1e-12;

  /** To which temperatures round in the cells [K]: counts where hardly any heat comes. */
  private static final double LAST_PLACE = Math.ulp(400.0);

  /** To which sums of a kilogram round over some tens of steps [kg/m²]. */
  private static final double LITTLE_WATER = 1e-14;

  /** See {@link DryingCookPropertiesTest}. */
  private static final double ACCURACY = 1e-5;

  private static final double HEAT = 2e-4;

  /** What an accuracy of 1e-5 K leaves in the mean of the cut, where little heat comes [K]. */
  private static final double ERROR = 3e-5;

  private static final double WATER = 2e-4;

  private static final double BOILING = SaturationPressure.boilingPoint(MoistAir.STANDARD_PRESSURE);

  /** Superheat of a face that boils under 150 kW/m², and what a water activity of 0.98 adds [K]. */
  private static final double ABOVE = 0.015 + 0.6;

  @Property(tries = 300)
  void anyCook_conservesHeatAndWater(@ForAll("cooks") Cook cook) {
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    double heat = result.energy().residual();
    double most = ROUND_OFF * result.energy().turnover() + Bodies.heldPerKelvin(cook) * LAST_PLACE;
    assertTrue(Math.abs(heat) <= most, () -> heat + " J/m² were lost, more than " + most);
    assertWater(result.upperFaceWater().stream().toList());
    assertWater(result.lowerFaceWater().stream().toList());
  }

  private static void assertWater(List<FaceWater> faces) {
    for (FaceWater face : faces) {
      double turnover = face.residual() == 0 ? 0 : face.residual() / face.relativeResidual();
      double most = ROUND_OFF * turnover + LITTLE_WATER;
      assertTrue(Math.abs(face.residual()) <= most, () -> face + " lost " + face.residual());
    }
  }

  @Property(tries = 100)
  void anyCook_integratesToItsBalances(@ForAll("cooks") Cook cook) {
    FluxIntegral integral = FluxIntegral.of(cook, ACCURACY, 40);
    Assume.that(!integral.nextToBoiling());
    double heat = integral.heatDiscrepancy() * integral.cook().turnover();
    double most = HEAT * integral.cook().turnover() + ERROR * Bodies.heldPerKelvin(cook);
    double upper = integral.waterUpper() - integral.cook().evaporatedUpper();
    double lower = integral.waterLower() - integral.cook().evaporatedLower();
    assertTrue(heat <= most, () -> "heat differs by " + heat + " J/m², more than " + most);
    assertTrue(Math.abs(upper) <= WATER, () -> "water differs by " + upper);
    assertTrue(Math.abs(lower) <= WATER, () -> "water differs by " + lower);
  }

  @Property(tries = 100)
  void anyCook_keepsFacesThatHoldWaterBelowBoiling(@ForAll("cooks") Cook cook) {
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    if (result.upperFaceWater().isEmpty()) {
      return;
    }
    for (int i = 0; i <= 5000; i++) {
      double time = result.endTime() * i / 5000;
      if (result.upperFaceWaterAt(time) > 0) {
        double value = result.upperSurface().at(time);
        assertTrue(value <= BOILING + ABOVE, () -> value + " K at " + time + " s");
      }
    }
  }

  /** Nothing in the package of laws is left out of the draws above. */
  @Example
  void everyLawOfTheLibrary_isDrawn() {
    JavaClasses library = new ClassFileImporter().importUrl(libraryClasses());
    Set<String> all = new TreeSet<>();
    for (JavaClass candidate : library) {
      if (isLaw(candidate)) {
        all.add(candidate.getSimpleName());
      }
    }
    Set<String> drawn = new TreeSet<>();
    AnyLaws.any().sampleStream().limit(3000).forEach(law -> collect(law, drawn));
    assertEquals(all, drawn);
    assertTrue(all.size() >= 11, all::toString);
  }

  private static boolean isLaw(JavaClass candidate) {
    return candidate.isAssignableTo(SurfaceLaw.class)
        && !candidate.isInterface()
        && candidate.getPackageName().equals(SurfaceLaw.class.getPackageName());
  }

  private static URL libraryClasses() {
    return SurfaceLaw.class.getProtectionDomain().getCodeSource().getLocation();
  }

  private static void collect(Object part, Set<String> names) {
    if (part instanceof SurfaceLaw[] laws) {
      Arrays.stream(laws).forEach(one -> collect(one, names));
    } else if (part instanceof SurfaceLaw) {
      names.add(part.getClass().getSimpleName());
      for (Field field : part.getClass().getDeclaredFields()) {
        if (!Modifier.isStatic(field.getModifiers())) {
          collect(read(part, field), names);
        }
      }
    }
  }

  private static Object read(Object of, Field field) {
    try {
      field.setAccessible(true);
      return field.get(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What a stage is like: how the cut lies in it, for how long, and what is done to it. */
  private enum Lying {
    ALIKE,
    ON_ONE_FACE,
    FLIPPED,
    FLIPPED_AT_TIMES,
    ROLLED,
    CUT,
    BASTED,
    BASTED_ON_ONE_FACE
  }

  private record Part(Lying lying, SurfaceLaw first, SurfaceLaw second, double duration) {

    List<Stage> stages(int number, double begins, boolean slab) {
      String name = "stage " + number;
      StageEnd end = StageEnd.after(duration);
      Stage alike = Stage.allRound(name, first, end);
      return switch (lying) {
        case ALIKE -> List.of(alike);
        case ON_ONE_FACE -> List.of(slab ? Stage.ofFaces(name, first, second, end) : alike);
        case FLIPPED ->
            slab ? Turns.every(duration / 3, 3).flips(name, first, second) : List.of(alike);
        case FLIPPED_AT_TIMES ->
            slab
                ? Turns.at(duration, 0.1 * duration, 0.7 * duration).flips(name, first, second)
                : List.of(alike);
        case ROLLED -> Turns.every(duration / 4, 4).rolls(name, first, second, 2);
        case CUT ->
            Stage.allRound(name, first, StageEnd.at(begins + duration))
                .cutAt(begins + 0.3 * duration, begins + 0.5 * duration);
        case BASTED -> List.of(first.holdsWater() ? alike.with(Wetting.allRound(0.15)) : alike);
        case BASTED_ON_ONE_FACE -> {
          Stage faces = slab ? Stage.ofFaces(name, first, second, end) : alike;
          boolean wets = slab && first.holdsWater();
          yield List.of(wets ? faces.with(new Wetting(0.3, 0)) : faces);
        }
      };
    }
  }

  @Provide
  static Arbitrary<Cook> cooks() {
    Arbitrary<Part> parts =
        Combinators.combine(
                Arbitraries.of(Lying.values()),
                AnyLaws.any(),
                AnyLaws.any(),
                AnyLaws.uniform(30, 900))
            .as(Part::new);
    return Combinators.combine(
            Arbitraries.of(SampleCooks.shapes()),
            Arbitraries.of(SampleCooks.CONSTANT, SampleCooks.LOIN, SampleCooks.BRISKET),
            Arbitraries.of(4.0, 25.0, 60.0),
            parts.list().ofMinSize(1).ofMaxSize(4))
        .as(
            (shape, material, start, all) -> {
              List<Stage> stages = new ArrayList<>();
              double begins = 0;
              for (Part part : all) {
                stages.addAll(part.stages(stages.size() + 1, begins, shape instanceof Slab));
                begins += part.duration();
              }
              return new Cook(
                  new Cut(shape, material, Temperatures.celsius(start)), stages, List.of());
            });
  }
}
