package org.roastfield.core.surface;

import java.util.List;

/** Laws acting together on one face. */
record SumOfLaws(List<SurfaceLaw> laws) implements SurfaceLaw {

  SumOfLaws {
    laws = List.copyOf(laws);
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    for (int i = 0; i < laws.size(); i++) {
      laws.get(i).evaluate(surfaceTemperature, time, flux);
    }
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
