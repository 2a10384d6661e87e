package org.roastfield.core.surface;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Laws acting together on one face. */
record SumOfLaws(List<SurfaceLaw> laws) implements SurfaceLaw {

  SumOfLaws {
    laws = flat(laws);
  }

  private static List<SurfaceLaw> flat(List<SurfaceLaw> laws) {
    List<SurfaceLaw> flat = new ArrayList<>();
    for (SurfaceLaw law : laws) {
      if (law instanceof SumOfLaws sum) {
        flat.addAll(sum.laws);
      } else if (law instanceof RememberingLaw) {
        throw new IllegalArgumentException(
            "laws of a sum must carry nothing along, but one was "
                + law
                + "; put the others into it");
      } else {
        flat.add(law);
      }
    }
    return List.copyOf(flat);
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
    return StandardRows.of(laws);
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
    for (int i = 0; i < laws.size(); i++) {
      if (laws.get(i).remembers()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    for (int i = 0; i < laws.size(); i++) {
      laws.get(i).evaluate(surfaceTemperature, time, flux);
    }
  }

  @Override
  public SurfaceLaw scaled(double factor) {
    return new SumOfLaws(laws.stream().map(law -> law.scaled(factor)).toList());
  }

  @Override
  public double highestTemperature() {
    double highest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < laws.size(); i++) {
      highest = Math.min(highest, laws.get(i).highestTemperature());
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
}
