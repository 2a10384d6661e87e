package org.roastfield.lab.plan;

import java.util.List;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.cooker.VariedCook;

/**
 * What is believed of a cook's unknown numbers.
 *
 * @param prior of all of them
 * @param words whose belief it is, in a sentence
 * @param fromLogs whether logs of the cooker stand behind it
 */
public record CookerBelief(Prior prior, String words, boolean fromLogs) {

  /** Without a log of the cooker. */
  public static CookerBelief population(VariedCook cook) {
    return new CookerBelief(
        Prior.of(cook.parameters()),
        "no profile, so heat, walls, damp and hot metal are drawn from what cookers of all kinds"
            + " have",
        false);
  }

  /** The same if the cooker were known without doubt: its numbers at their medians. */
  Prior cookerKnown() {
    List<Parameter> own =
        prior.parameters().list().stream()
            .filter(parameter -> parameter.owner() != Owner.COOKER)
            .toList();
    return Prior.of(ParameterSet.of(own.toArray(new Parameter[0])));
  }

  /** Whether something of the cooker is in doubt. */
  boolean doubtsCooker() {
    return prior.parameters().list().stream().anyMatch(one -> one.owner() == Owner.COOKER);
  }

  /** Every number at its median. */
  ParameterPoint middle() {
    double[] values = prior.parameters().values(prior.mean());
    ParameterPoint point = ParameterPoint.empty();
    for (int p = 0; p < values.length; p++) {
      Parameter parameter = prior.parameters().get(p);
      point = point.with(parameter.id(), values[p], parameter.spread());
    }
    return point;
  }
}
