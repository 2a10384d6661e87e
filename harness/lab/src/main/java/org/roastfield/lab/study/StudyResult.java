package org.roastfield.lab.study;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.roastfield.lab.result.Json;

/**
 * What a study found.
 *
 * @param study its name
 * @param size of the study, its word
 * @param seed of all that was drawn
 * @param cases how many made-up cases there were
 * @param bars in order
 * @param remarks sentences on what else was seen
 */
public record StudyResult(
    String study, String size, long seed, int cases, List<Bar> bars, List<String> remarks) {

  /** Copies the lists. */
  public StudyResult {
    bars = List.copyOf(bars);
    remarks = List.copyOf(remarks);
  }

  /** Whether every bar that counts is met. */
  public boolean isMet() {
    return bars.stream().allMatch(bar -> bar.isMet() || !bar.counts());
  }

  /** The command that gives it again. */
  public String command() {
    return "roastfield study " + study + " --size " + size + " --seed " + seed;
  }

  /** As JSON. */
  public String json() {
    ObjectNode root = Json.document("roastfield-study", 1);
    root.put("study", study).put("command", command()).put("cases", cases).put("met", isMet());
    ArrayNode list = root.putArray("bars");
    for (Bar bar : bars) {
      list.addObject()
          .put("what", bar.what())
          .put("value", Json.rounded(bar.value(), 1e4))
          .put("low", bar.low())
          .put("high", bar.high())
          .put("counts", bar.counts())
          .put("met", bar.isMet());
    }
    ArrayNode said = root.putArray("remarks");
    remarks.forEach(said::add);
    return Json.text(root);
  }
}
