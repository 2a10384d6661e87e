package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.inference.CookerPopulation;
import org.roastfield.core.inference.LogSite;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * What profiles of other cookers say of a cooker that no log is known of yet: medians and spreads
 * over cookers, eqs. (89)-(91) with one site a profile, instead of the assumed ones. What was
 * learned of correlations over cookers is left out: so few cannot tell them. Immutable.
 *
 * @param priors of a cooker's numbers, as far as the profiles have them
 * @param madeUp whether a profile is
 */
public record OtherCookers(ParameterSet priors, boolean madeUp) {

  /** No profiles: what is assumed of cookers stands. */
  public static final OtherCookers NONE = new OtherCookers(ParameterSet.empty(), false);

  /** As many cookers as what is assumed of them counts for beside those that were seen. */
  public static final double WEIGHT = 4;

  /**
   * Learns from profiles.
   *
   * @param profiles each of another cooker, {@link #canTell} of all of them
   * @throws IllegalArgumentException if they are fewer than {@link CookerPopulation#LEAST_COOKERS},
   *     or two have a log in common
   */
  public static OtherCookers of(List<CookerProfile> profiles) {
    if (profiles.size() < CookerPopulation.LEAST_COOKERS) {
      throw new IllegalArgumentException(
          "profiles of other cookers must be at least "
              + CookerPopulation.LEAST_COOKERS
              + " that can be relied on, were "
              + profiles.size()
              + ": fewer do not tell how far cookers differ");
    }
    refuseTwins(profiles);
    ParameterSet all = ParameterSet.empty();
    for (Parameter parameter : CookerNumbers.all().list()) {
      boolean known = profiles.stream().anyMatch(one -> one.parameters().has(parameter.id()));
      all = known ? all.with(parameter) : all;
    }
    List<List<LogSite>> sites = new ArrayList<>();
    for (CookerProfile profile : profiles) {
      Prior before = before(profile, all);
      sites.add(List.of(LogSite.between(before, before.with(profile.belief()))));
    }
    int n = all.size();
    Prior cooker =
        CookerPopulation.assumed(Prior.of(all), new double[n][n])
            .learned(sites, WEIGHT)
            .newCooker();
    String source = String.format(Locale.ROOT, "learned from %d other cookers", profiles.size());
    ParameterSet learned = ParameterSet.empty();
    for (int p = 0; p < n; p++) {
      learned = learned.with(learned(all.get(p), cooker.mean()[p], cooker.spread(p), source));
    }
    return new OtherCookers(learned, profiles.stream().anyMatch(CookerProfile::madeUp));
  }

  /** Whether a profile is of logs that were judged, and not called a misfit. */
  public static boolean canTell(CookerProfile profile) {
    return profile.complete()
        && List.of("as-stated", "in-doubt").contains(profile.diagnosis().status());
  }

  private static void refuseTwins(List<CookerProfile> profiles) {
    for (int i = 0; i < profiles.size(); i++) {
      for (int j = 0; j < i; j++) {
        Optional<String> log = common(profiles.get(j), profiles.get(i));
        if (log.isPresent()) {
          throw new IllegalArgumentException(
              "profiles of other cookers must be of one cooker each, but "
                  + profiles.get(j).id()
                  + " and "
                  + profiles.get(i).id()
                  + " have the readings of log "
                  + log.get()
                  + " in common: leave one of them out");
        }
      }
    }
  }

  private static Optional<String> common(CookerProfile one, CookerProfile other) {
    List<String> hashes = one.logs().stream().map(CookerProfile.Log::sha256).toList();
    return other.logs().stream()
        .filter(log -> hashes.contains(log.sha256()))
        .map(CookerProfile.Log::name)
        .findFirst();
  }

  /** What was believed before its logs: by the profile's own word where it has a number. */
  private static Prior before(CookerProfile profile, ParameterSet all) {
    ParameterSet own = ParameterSet.empty();
    for (Parameter parameter : all.list()) {
      own = own.with(in(profile.parameters(), parameter));
    }
    return Prior.of(own);
  }

  private static Parameter in(ParameterSet some, Parameter parameter) {
    return some.has(parameter.id()) ? some.get(some.index(parameter.id())) : parameter;
  }

  private static Parameter learned(Parameter of, double middle, double spread, String source) {
    return new Parameter(
        of.id(),
        of.unit(),
        of.owner(),
        of.scale(),
        of.scale().value(middle),
        spread,
        of.low(),
        of.high(),
        source);
  }

  /** A parameter with the prior that was learned, or as it is. */
  Parameter prior(Parameter parameter) {
    return in(priors, parameter);
  }

  /** A case whose cooker is believed to be like these. */
  LoggedCase in(LoggedCase one) {
    ParameterSet parameters = ParameterSet.empty();
    for (Parameter parameter : one.parameters().list()) {
      parameters = parameters.with(prior(parameter));
    }
    return one.with(parameters);
  }
}
