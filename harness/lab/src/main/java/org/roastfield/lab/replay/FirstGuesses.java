package org.roastfield.lab.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Where a fit begins: at the given or neutral values, but with a size or convection that nobody
 * gave at the best of several pairs. From far off, steps by slopes can end where a wrong size is
 * made good by a wrong convection or drive.
 */
final class FirstGuesses {

  private static final double[] SIZES = {0.5, 0.63, 0.8, 1, 1.25, 1.6, 2};
  private static final double[] CONVECTIONS = {0.3, 0.6, 1, 1.7, 3};

  /** How many of the pairs are followed. */
  private static final int FOLLOWED = 4;

  private final List<FitParameter> free;
  private final Map<FitParameter, Double> given;

  FirstGuesses(List<FitParameter> free, Map<FitParameter, Double> given) {
    this.free = free;
    this.given = given;
  }

  private record Guess(double size, double convection, double squares) {}

  /** Values of the free parameters to begin with, the best first, at least one. */
  List<double[]> best(BoundedSearch.Residuals residuals) {
    List<Guess> guesses = new ArrayList<>();
    for (double size : tried(FitParameter.SIZE, SIZES)) {
      for (double convection : tried(FitParameter.CONVECTION, CONVECTIONS)) {
        double squares = BoundedSearch.squares(residuals.at(values(size, convection)));
        guesses.add(new Guess(size, convection, squares));
      }
    }
    return guesses.stream()
        .sorted(Comparator.comparingDouble(Guess::squares))
        .limit(FOLLOWED)
        .map(guess -> values(guess.size(), guess.convection()))
        .toList();
  }

  private double[] values(double size, double convection) {
    double[] values = new double[free.size()];
    for (int p = 0; p < values.length; p++) {
      values[p] =
          switch (free.get(p)) {
            case SIZE -> size;
            case CONVECTION -> convection;
            case DRIVE, START -> stated(free.get(p));
          };
    }
    return values;
  }

  private double[] tried(FitParameter parameter, double[] values) {
    boolean open = free.contains(parameter) && !given.containsKey(parameter);
    return open ? values : new double[] {stated(parameter)};
  }

  private double stated(FitParameter parameter) {
    return given.getOrDefault(parameter, parameter.neutral());
  }
}
