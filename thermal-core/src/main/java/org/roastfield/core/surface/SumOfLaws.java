package org.roastfield.core.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Laws acting together on one face. Immutable. */
final class SumOfLaws implements SurfaceLaw {

  private final SurfaceLaw[] laws;

  SumOfLaws(List<SurfaceLaw> laws) {
    this.laws = flat(laws).toArray(SurfaceLaw[]::new);
  }

  /** The laws, none of them a sum. */
  List<SurfaceLaw> laws() {
    return List.of(laws);
  }

  private static List<SurfaceLaw> flat(List<SurfaceLaw> laws) {
    List<SurfaceLaw> flat = new ArrayList<>();
    for (SurfaceLaw law : laws) {
      if (law instanceof SumOfLaws sum) {
        flat.addAll(sum.laws());
      } else if (law instanceof RememberingLaw) {
        throw new IllegalArgumentException(
            "laws of a sum must carry nothing along, but one was "
                + law
                + "; put the others into it");
      } else {
        flat.add(law);
      }
    }
    return flat;
  }

  @Override
  public SurfaceLaw under(Wrap wrap) {
    List<SurfaceLaw> wrapped = new ArrayList<>();
    for (SurfaceLaw law : laws) {
      wrapped.add(law.under(wrap));
    }
    return new SumOfLaws(wrapped);
  }

  @Override
  public @Nullable LawRows rows() {
    return StandardRows.of(laws());
  }

  @Override
  public SurfaceLaw from(double time) {
    if (!remembers()) {
      return this;
    }
    List<SurfaceLaw> begun = new ArrayList<>();
    for (SurfaceLaw law : laws) {
      begun.add(law.from(time));
    }
    return new SumOfLaws(begun);
  }

  @Override
  public boolean remembers() {
    for (SurfaceLaw law : laws) {
      if (law.remembers()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    for (SurfaceLaw law : laws) {
      law.evaluate(surfaceTemperature, time, flux);
    }
  }

  @Override
  public SurfaceLaw scaled(double factor) {
    return new SumOfLaws(Arrays.stream(laws).map(law -> law.scaled(factor)).toList());
  }

  @Override
  public double highestTemperature() {
    double highest = Double.POSITIVE_INFINITY;
    for (SurfaceLaw law : laws) {
      highest = Math.min(highest, law.highestTemperature());
    }
    return highest;
  }

  @Override
  public double shortestPeriod() {
    double shortest = Double.POSITIVE_INFINITY;
    for (SurfaceLaw law : laws) {
      shortest = Math.min(shortest, law.shortestPeriod());
    }
    return shortest;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SumOfLaws sum && Arrays.equals(laws, sum.laws);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(laws);
  }

  @Override
  public String toString() {
    return "SumOfLaws" + Arrays.toString(laws);
  }
}
