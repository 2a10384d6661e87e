package org.roastfield.core.inference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One problem of resources/nist with its model. */
final class NistProblem implements LeastSquaresProblem {

  final String name;
  double[] start1 = new double[0];
  double[] start2 = new double[0];
  double[] certified = new double[0];
  double squares;
  private final List<double[]> rows = new ArrayList<>();

  NistProblem(String name) {
    this.name = name;
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(
                    NistProblem.class.getResourceAsStream("/nist/" + name + ".txt")),
                StandardCharsets.UTF_8))) {
      in.lines().forEach(this::read);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void read(String line) {
    int space = line.indexOf(' ');
    String head = line.substring(0, space);
    switch (head) {
      case "start1" -> start1 = numbers(line.substring(space));
      case "start2" -> start2 = numbers(line.substring(space));
      case "certified" -> certified = numbers(line.substring(space));
      case "squares" -> squares = numbers(line.substring(space))[0];
      default -> rows.add(numbers(line));
    }
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.trim().split(" +")).mapToDouble(Double::parseDouble).toArray();
  }

  @Override
  public int unknowns() {
    return certified.length;
  }

  @Override
  public int residuals() {
    return rows.size();
  }

  @Override
  public boolean at(double[] x, double[] r, double @Nullable [][] jacobian) {
    Dual[] b = new Dual[x.length];
    for (int p = 0; p < b.length; p++) {
      b[p] = Dual.unknown(x[p], p, b.length);
    }
    for (int i = 0; i < r.length; i++) {
      double[] row = rows.get(i);
      Dual model = NistModels.at(name, b, row);
      double measured = name.equals("Nelson") ? StrictMath.log(row[0]) : row[0];
      r[i] = model.value() - measured;
      for (int p = 0; jacobian != null && p < b.length; p++) {
        jacobian[p][i] = model.slope(p);
      }
    }
    return true;
  }

  /** Correct digits of the worst parameter: −log10 of its relative error. */
  double digits(double[] x) {
    double worst = 0;
    for (int p = 0; p < x.length; p++) {
      worst = Math.max(worst, Math.abs(x[p] / certified[p] - 1));
    }
    return Double.isNaN(worst) ? 0 : -StrictMath.log10(Math.max(worst, 1e-16));
  }
}
