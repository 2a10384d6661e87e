package org.roastfield.lab.cooker;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.files.CookerProfileFile;

/** Profiles of cookers that no log stands behind. */
public final class SampleProfiles {

  private SampleProfiles() {}

  /**
   * Any profile: some of a cooker's numbers with correlated beliefs within their bounds.
   *
   * @param words of a log's name
   */
  static CookerProfile random(Random random, String words) {
    ParameterSet parameters = ParameterSet.empty();
    for (Parameter parameter : CookerNumbers.all().list()) {
      parameters = random.nextInt(4) > 0 ? parameters.with(parameter) : parameters;
    }
    if (parameters.size() == 0) {
      parameters = ParameterSet.of(CookParameters.HUMIDITY);
    }
    double coolest = 300 + 200 * random.nextDouble();
    double thinnest = 0.01 + 0.05 * random.nextDouble();
    List<CookerProfile.Log> logs = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(4); i++) {
      String hash = String.format("%064x", random.nextLong(Long.MAX_VALUE));
      logs.add(
          new CookerProfile.Log(words + i, hash, random.nextInt(100_000), random.nextDouble()));
    }
    return new CookerProfile(
        "sample-pit",
        CookerProfile.MODEL,
        random.nextBoolean(),
        random.nextBoolean(),
        parameters,
        belief(parameters, random),
        new CookerProfile.Validity(
            coolest,
            coolest + 100 * random.nextDouble(),
            thinnest,
            thinnest + 0.1 * random.nextDouble()),
        new ErrorModel(
            random.nextDouble(), 60 + random.nextInt(9000), 0.01 + random.nextDouble(), 0),
        new CookerProfile.Diagnosis(
            CookerProfile.Diagnosis.STATUSES.get(random.nextInt(4)),
            1 + random.nextInt(9),
            random.nextBoolean() ? Double.NaN : random.nextDouble(),
            1000 * random.nextGaussian(),
            random.nextInt(10_000),
            random.nextBoolean() ? Double.NaN : random.nextGaussian()),
        logs);
  }

  private static Prior belief(ParameterSet parameters, Random random) {
    int n = parameters.size();
    double[] mean = new double[n];
    double[][] root = new double[n][n];
    for (int a = 0; a < n; a++) {
      Parameter parameter = parameters.get(a);
      double share = random.nextDouble();
      mean[a] = (1 - share) * parameter.lowest() + share * parameter.highest();
      for (int b = 0; b <= a; b++) {
        root[a][b] =
            parameter.spread() * (a == b ? 0.2 + random.nextDouble() : random.nextDouble());
      }
    }
    double[][] covariance = new double[n][n];
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        for (int c = 0; c < n; c++) {
          covariance[a][b] += root[a][c] * root[b][c];
        }
      }
    }
    return Prior.of(parameters, mean, covariance);
  }

  /** Hash of the log that a sure profile is of. */
  public static String hashOf(String id) {
    return String.format("%064x", id.hashCode());
  }

  /**
   * A sure profile that holds for every cook, of a log that no other id has.
   *
   * @param convection over the stated one
   */
  public static CookerProfile sure(String id, double convection) {
    ParameterSet parameters = ParameterSet.of(CookParameters.CONVECTION);
    Parameter known = parameters.get(0);
    return new CookerProfile(
        id,
        CookerProfile.MODEL,
        true,
        true,
        parameters,
        Prior.of(
            parameters,
            new double[] {known.scale().coordinate(convection)},
            new double[][] {{0.01 * known.spread() * known.spread()}}),
        new CookerProfile.Validity(280, 900, 0.001, 1),
        ErrorModel.CORE,
        new CookerProfile.Diagnosis("as-stated", 1, 1, 0, 1, Double.NaN),
        List.of(new CookerProfile.Log("made-up", hashOf(id), 1, 0)));
  }

  /** A profile as its file says it. */
  static CookerProfile read(String id, String text) {
    return CookerProfileJson.read(
        CookerProfileFile.parse(Path.of(id + ".json"), text.getBytes(StandardCharsets.UTF_8)));
  }
}
