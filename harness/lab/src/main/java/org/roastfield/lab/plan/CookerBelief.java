package org.roastfield.lab.plan;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.inference.ChamberEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.diagnosis.ProfileWords;

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
        "no profile, so heat, walls, damp and hot metal are as of any cooker; logs"
            + " narrow that",
        false);
  }

  /**
   * By the logs of the cooker; what its profile does not hold stays as without one.
   *
   * @throws UnplannableException if the logs of the profile did not fit their cook files, or told
   *     nothing of the cooker
   */
  public static CookerBelief of(CookerProfile profile, VariedCook cook) {
    String status = profile.diagnosis().status();
    if (status.equals("misfit")) {
      throw new UnplannableException(
          "profile "
              + profile.id()
              + " is not to be relied on: the logs it was made from do not fit their cook files;"
              + " see its report, or go without it");
    }
    if (!profile.hasInformation()) {
      throw new UnplannableException(
          "profile "
              + profile.id()
              + " holds no information: its logs told nothing of the cooker beyond what is believed"
              + " of cookers of all kinds; go without it, or calibrate with more logs, another depth"
              + " or a weight");
    }
    boolean inside = profile.holds(cook);
    return new CookerBelief(
        prior(profile, cook, inside),
        "profile "
            + profile.id()
            + " "
            + ProfileWords.source(profile)
            + (status.equals("as-stated") ? "" : ", " + status.replace('-', ' '))
            + (inside ? "" : ", whose cooks were unlike this one: its spreads count double"),
        true);
  }

  /**
   * With the drift of its air and what openings of its lid cost, where they are known and count.
   */
  private static Prior prior(CookerProfile profile, VariedCook cook, boolean inside) {
    ParameterSet all = cook.parameters();
    Optional<Prior> habit = profile.habit().filter(known -> cook.strays());
    if (habit.isEmpty()) {
      return profile.within(all, inside);
    }
    for (Parameter parameter : habit.get().parameters().list()) {
      all = all.with(parameter);
    }
    Prior next = ChamberEstimate.population(habit.get()).nextCook();
    return profile.within(all, inside).with(next);
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
  public ParameterPoint middle() {
    return at(prior.mean());
  }

  /** The numbers at coordinates. */
  public ParameterPoint at(double[] coordinates) {
    return prior.parameters().point(coordinates);
  }
}
