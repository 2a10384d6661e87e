package org.roastfield.lab.diagnosis;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.inference.Diagnosis;
import org.roastfield.core.inference.Explanations;
import org.roastfield.lab.result.Json;

/** A verdict and its findings as JSON. */
public final class FindingsJson {

  private FindingsJson() {}

  /** Puts them into an object. */
  public static void into(ObjectNode node, Verdict verdict, List<Finding> findings) {
    node.put("status", verdict.status().word())
        .put("probability_as_stated", Json.rounded(verdict.probabilityAsStated(), 1e4));
    node.putObject("conflict")
        .put("chi_square", Json.rounded(verdict.diagnosis().conflict().square(), 1e3))
        .put("directions", verdict.diagnosis().conflict().directions())
        .put("chance", Json.rounded(verdict.diagnosis().conflict().chance(), 1e6));
    ArrayNode series = node.putArray("series");
    for (Diagnosis.SeriesCheck check : verdict.diagnosis().series()) {
      series
          .addObject()
          .put("name", check.name())
          .put("readings", check.whiteness().count())
          .put("whitened_mean", Json.rounded(check.whiteness().mean(), 1e4))
          .put("chance_of_correlation", Json.rounded(check.whiteness().chanceOfCorrelation(), 1e6))
          .put("drift_ratio", Json.rounded(check.strain().drift(), 1e3))
          .put("drift_time_ratio", Json.rounded(check.strain().time(), 1e3))
          .put("noise_ratio", Json.rounded(check.strain().noise(), 1e3))
          .put("outlying_share", Json.rounded(check.outlying(), 1e4));
    }
    ArrayNode explanations = node.putArray("explanations");
    for (Explanations.Ranked each : verdict.explanations().ranked()) {
      ObjectNode one =
          explanations
              .addObject()
              .put("what", what(verdict, each))
              .put("probability", Json.rounded(each.probability(), 1e4))
              .put("log_weight_nat", Json.rounded(each.logWeight(), 1e3));
      verdict.fitted().stream()
          .filter(suspicion -> suspicion.explanation().equals(each.explanation()))
          .filter(suspicion -> !suspicion.log().isEmpty())
          .forEach(suspicion -> one.put("log", suspicion.log()));
    }
    ArrayNode list = node.putArray("findings");
    for (Finding finding : findings) {
      ObjectNode one = list.addObject();
      one.put("about", finding.kind().word())
          .put("weight", finding.weight().name().toLowerCase(Locale.ROOT));
      finding.log().ifPresent(log -> one.put("log", log));
      one.put("words", finding.words());
    }
  }

  private static String what(Verdict verdict, Explanations.Ranked ranked) {
    return verdict.fitted().stream()
        .filter(suspicion -> suspicion.explanation().equals(ranked.explanation()))
        .map(suspicion -> suspicion.suspect().word())
        .findFirst()
        .orElse(Suspect.NONE.word());
  }
}
