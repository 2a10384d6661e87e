package org.roastfield.lab.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.ImportanceSampler;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.WeightedDraws;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.cooker.CookerProfile;

/** The library's posteriors against reference draws of a dozen logs, which are stored. */
class ReferenceCasesTest {

  private static final Path STORED = Path.of("../../datasets/reference/posteriors.json");

  private static final int DRAWS = 10_000;

  private static JsonNode stored() throws IOException {
    return new ObjectMapper().readTree(Files.readString(STORED));
  }

  private static JsonNode of(JsonNode all, ReferenceCases.Case one) {
    for (JsonNode each : all.get("posteriors")) {
      if (each.get("id").asText().equals(one.id())) {
        return each;
      }
    }
    throw new AssertionError("no posterior of " + one.id() + " is stored");
  }

  /** A posterior is of its readings and its prior: others need draws of their own. */
  @Test
  void storedDraws_areOfTheseLogs_andConverged() throws IOException {
    JsonNode all = stored();
    assertEquals(
        CookerProfile.MODEL.charAt(0), all.get("model_version").asText().charAt(0), "model");
    assertEquals(ReferenceCases.count(), all.get("posteriors").size());
    for (int p = 0; p < Truths.PRIOR.size(); p++) {
      JsonNode prior = all.get("prior").get(p);
      assertEquals(StudyCook.PARAMETERS.get(p).id(), prior.get("id").asText());
      assertEquals(Truths.PRIOR.mean()[p], prior.get("centre").asDouble(), 1e-6);
      assertEquals(Truths.PRIOR.spread(p), prior.get("spread").asDouble(), 1e-12);
    }
    for (ReferenceCases.Case one : ReferenceCases.all()) {
      JsonNode drawn = of(all, one);
      double[] readings = one.readings();
      double mean = Arrays.stream(readings).average().orElseThrow();
      JsonNode of = drawn.get("readings");
      assertEquals(readings.length, of.get("count").asInt());
      assertEquals(Temperatures.toCelsius(mean), of.get("mean_degC").asDouble(), 2e-3, one.id());
      assertEquals(
          Temperatures.toCelsius(readings[readings.length - 1]),
          of.get("last_degC").asDouble(),
          2e-3);
      assertTrue(drawn.get("draws").get("converged").asBoolean(), one.id());
    }
  }

  /** What forecasts draw of a belief: within its bounds. */
  private static Tally[] drawn(Prior belief, RandomGenerator random) {
    Tally[] tallies = new Tally[belief.size()];
    Arrays.setAll(tallies, p -> new Tally());
    for (int i = 0; i < DRAWS; i++) {
      double[] draw = belief.draw(random);
      for (int p = 0; p < draw.length; p++) {
        tallies[p].add(draw[p]);
      }
    }
    return tallies;
  }

  /**
   * Stated errors (thermal-core/docs/calibration-studies.md), which hold the noise of both kinds of
   * draws: means within 0.25 spreads, spreads within a quarter, evidence within 1 nat.
   */
  @Test
  void normalApproximation_isWithinItsStatedErrors() throws IOException {
    JsonNode all = stored();
    for (ReferenceCases.Case one : ReferenceCases.all()) {
      JsonNode exact = of(all, one);
      MapEstimate estimate = one.fit().estimate();
      Tally[] normal = drawn(estimate.asPrior(), Truths.random(3, 0));
      for (int p = 0; p < normal.length; p++) {
        Compared found = new Compared(one, exact, p);
        assertEquals(0, found.meanOff(normal[p].mean()), 0.25, found::name);
        assertEquals(0, found.spreadOff(normal[p].spread()), 0.25, found::name);
      }
      double evidence = exact.get("log_evidence_nat").get("mean").asDouble();
      assertEquals(evidence, estimate.logEvidence(), 1, one.id());
    }
  }

  /** Four standard errors of both: of a normal distribution, where it is one of a spread. */
  @Test
  void importanceDraws_areWithinTheNoiseOfBoth() throws IOException {
    JsonNode all = stored();
    int number = 0;
    for (ReferenceCases.Case one : ReferenceCases.all()) {
      StudyLog.Fit fit = one.fit();
      WeightedDraws draws =
          ImportanceSampler.of(4, 250)
              .sample(
                  fit.estimate(),
                  fit.calibration().density(fit.estimate()),
                  Truths.random(3, ++number));
      assertTrue(draws.isReliable(), () -> one.id() + ": tail " + draws.tailShape());
      for (int p = 0; p < Truths.PRIOR.size(); p++) {
        Compared found = new Compared(one, of(all, one), p);
        double error = Math.sqrt(1 / found.effectiveSize() + 1 / draws.effectiveSize());
        double spread = Math.sqrt(draws.covariance()[p][p]);
        assertTrue(error < 0.07, found::name);
        assertEquals(0, found.meanOff(draws.mean()[p]), 4 * error, found::name);
        assertEquals(0, found.spreadOff(spread), 4 * error / Math.sqrt(2), found::name);
      }
    }
  }

  /** A coordinate of a posterior as reference draws have it. */
  private record Compared(ReferenceCases.Case one, JsonNode posterior, int parameter) {

    private JsonNode stored() {
      return posterior.get("parameters").get(parameter);
    }

    String name() {
      return one.id() + ", " + stored().get("id").asText();
    }

    double effectiveSize() {
      return stored().get("effective_size").asDouble();
    }

    /** Of a mean, in spreads. */
    double meanOff(double mean) {
      return (mean - stored().get("mean").asDouble()) / stored().get("spread").asDouble();
    }

    /** Of a spread, as a logarithm. */
    double spreadOff(double spread) {
      return Math.log(spread / stored().get("spread").asDouble());
    }
  }
}
