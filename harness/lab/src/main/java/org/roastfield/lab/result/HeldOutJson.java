package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.roastfield.lab.heldout.HeldOutScores;
import org.roastfield.lab.score.ForecastCase;
import org.roastfield.lab.score.ScoreSummary;

/** Scores on cooks that were kept aside as JSON. */
public final class HeldOutJson {

  private HeldOutJson() {}

  /** Text of scores.json; times in seconds. */
  public static String text(HeldOutScores scores) {
    ObjectNode root = Json.document("roastfield-scores", 1);
    ArrayNode traces = root.putArray("traces");
    for (HeldOutScores.TraceError error : scores.errors()) {
      traces
          .addObject()
          .put("cook", error.cook())
          .put("cooks_in_profile", error.others())
          .put("rms_K", Json.rounded(error.rootMeanSquare(), 1e3));
    }
    ArrayNode forecasts = root.putArray("forecasts");
    scores
        .forecasts()
        .forEach(
            (share, by) ->
                by.forEach((name, summary) -> add(forecasts.addObject(), share, name, summary)));
    ArrayNode leftOut = root.putArray("left_out");
    scores.leftOut().forEach(leftOut::add);
    return Json.text(root);
  }

  private static void add(ObjectNode node, double share, String name, ScoreSummary summary) {
    node.put("seen", share)
        .put("forecaster", name)
        .put("cooks", summary.cooks())
        .put("crps_s", Json.rounded(summary.crps(), 1e1))
        .put("bias_s", Json.rounded(summary.bias(), 1e1))
        .put("mean_absolute_error_s", Json.rounded(summary.meanAbsoluteError(), 1e1));
    ArrayNode intervals = node.putArray("intervals");
    for (double level : ForecastCase.LEVELS) {
      intervals
          .addObject()
          .put("level", level)
          .put("covered", summary.coverage(level).share())
          .put("width_s", Json.rounded(summary.coverage(level).width(), 1e1));
    }
    ArrayNode places = node.putArray("pit");
    for (double pit : summary.pits()) {
      places.add(Json.rounded(pit, 1e4));
    }
  }
}
