package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.Scale;
import org.roastfield.lab.cooker.CookerProfile;

/** What a cooker profile says, in words and numbers. */
public final class ProfileWords {

  /** From a standard deviation to the distance of the 10 and the 90 % quantile. */
  private static final double TENTH = 1.2815515655446004;

  /** Growth of a variance from which it is said, beyond what approximations do. */
  private static final double GREW = 0.05;

  private ProfileWords() {}

  /** "from 3 logs", and by which model, if that was an older one. */
  public static String source(CookerProfile profile) {
    int logs = profile.logs().size();
    return "from "
        + logs
        + (logs == 1 ? " log" : " logs")
        + (isOlder(profile)
            ? " by model "
                + profile.model()
                + ", older than this one's "
                + CookerProfile.MODEL
                + ": calibrate its logs again when you can"
            : "");
  }

  private static boolean isOlder(CookerProfile profile) {
    return !profile.model().equals(CookerProfile.MODEL);
  }

  /** What is said of older logs that new ones are added to, if they spoke by an older model. */
  static Optional<String> older(CookerProfile before) {
    return isOlder(before)
        ? Optional.of(
            "the profile before these logs is of model "
                + before.model()
                + ", older than this one's "
                + CookerProfile.MODEL
                + ": what it knew counts as it stands; calibrate all logs together, without it, to"
                + " have one model's word")
        : Optional.empty();
  }

  /** One row a number: name, before, now with its range, what was learned. */
  public static List<List<String>> rows(CookerProfile profile) {
    List<List<String>> rows = new ArrayList<>();
    for (int p = 0; p < profile.parameters().size(); p++) {
      Parameter parameter = profile.parameters().get(p);
      rows.add(
          List.of(
              ParameterWords.of(parameter.id()),
              range(parameter, parameter.centre(), parameter.spread()),
              range(parameter, profile.belief().mean()[p], profile.belief().spread(p)),
              profile.isIdentified(p)
                  ? String.format(Locale.ROOT, "%.0f %%", 100 * profile.contraction(p))
                  : profile.contraction(p) < -GREW ? "less than before" : "nothing to speak of"));
    }
    return rows;
  }

  private static String range(Parameter parameter, double centre, double spread) {
    Scale scale = parameter.scale();
    double low = scale.value(centre - TENTH * spread);
    double high = scale.value(centre + TENTH * spread);
    if (scale == Scale.LOGARITHM && !parameter.unit().equals("1")) {
      boolean seconds = parameter.unit().equals("s");
      double unit = seconds ? 60 : 1;
      return String.format(
          Locale.ROOT,
          seconds ? "%.0f %s (%.0f to %.0f)" : "%.1f %s (%.1f to %.1f)",
          scale.value(centre) / unit,
          seconds ? "min" : parameter.unit(),
          low / unit,
          high / unit);
    }
    return scale == Scale.LOGARITHM
        ? String.format(Locale.ROOT, "× %.2f (%.2f to %.2f)", scale.value(centre), low, high)
        : String.format(
            Locale.ROOT,
            "%+.1f %s (%+.1f to %+.1f)",
            scale.value(centre),
            parameter.unit(),
            low,
            high);
  }

  /** Whether a profile can be relied on, and what a new cook gets. */
  public static String status(CookerProfile profile) {
    if (!profile.hasInformation()) {
      return "No information: the logs tell nothing of the cooker beyond what is believed of cookers"
          + " of all kinds. plan and replay refuse this profile: go without it, or add logs, a"
          + " probe at another depth or a weight.";
    }
    String reliance =
        switch (profile.diagnosis().status()) {
          case "as-stated" -> "The logs agree with their cook files as far as they can tell";
          case "in-doubt" -> "Something stated may be wrong: spreads count with it";
          case "misfit" -> "Not to be relied on before the findings above are cleared";
          default -> "Unchecked";
        };
    return reliance
        + ". A new cook gets these numbers with what differs from cook to cook added. Estimates, which"
        + " permit nothing: check with a thermometer you trust.";
  }
}
