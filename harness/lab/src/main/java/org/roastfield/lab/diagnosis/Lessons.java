package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.cooker.CookerNumbers;

/** What logs tell and what they cannot, in words. */
final class Lessons {

  /** Contraction from which a combination counts as known, and one number as known by itself. */
  private static final double KNOWN = 0.8;

  /** Growth of a variance from which it is said, beyond what approximations do. */
  private static final double GREW = 0.05;

  /** Loading in a combination, in prior spreads, from which a number belongs to it: assumed. */
  private static final double BELONGS = 0.35;

  private final Prior prior;
  private final Prior belief;

  /**
   * Lessons.
   *
   * @param prior what was believed before
   * @param belief what is believed now, and what the profile is made of
   */
  Lessons(Prior prior, Prior belief) {
    this.prior = prior;
    this.belief = belief;
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    List<String> silent = new ArrayList<>();
    for (int p = 0; p < prior.size(); p++) {
      Parameter parameter = prior.parameters().get(p);
      if (contraction(p) < -GREW) {
        findings.add(
            Finding.of(
                Finding.Kind.NOT_TOLD,
                Finding.Weight.NOTE,
                String.format(
                    Locale.ROOT,
                    "%s is known less than before: the logs contradict what was believed of it, and"
                        + " its variance is %.2f times as large",
                    name(p),
                    1 - contraction(p))));
      } else if (contraction(p) < MapEstimate.LEAST_CONTRACTION) {
        if (sinceFirstLog(p) < MapEstimate.LEAST_CONTRACTION) {
          silent.add(name(p));
        } else {
          findings.add(known(parameter, p));
        }
      } else {
        findings.add(
            Finding.of(
                Finding.Kind.LEARNED,
                Finding.Weight.NOTE,
                String.format(
                    Locale.ROOT,
                    "%s: %.2f of its prior variance is gone, %s",
                    name(p),
                    contraction(p),
                    value(parameter, p))));
      }
    }
    if (!silent.isEmpty()) {
      findings.add(
          Finding.of(
              Finding.Kind.NOT_TOLD,
              Finding.Weight.NOTE,
              "nothing is claimed for "
                  + ParameterWords.list(silent)
                  + ": what is given for them leans on what was believed before"));
    }
    combinations(findings);
    return findings;
  }

  /** What older logs told of a number and these add little to. */
  private Finding known(Parameter parameter, int p) {
    return Finding.of(
        Finding.Kind.LEARNED,
        Finding.Weight.NOTE,
        String.format(
            Locale.ROOT,
            "%s: %.2f of the variance from before its first log is gone, most of it by the older"
                + " logs (these took %.2f of what was left), %s",
            name(p),
            sinceFirstLog(p),
            Math.max(0, contraction(p)),
            value(parameter, p)));
  }

  /** Share of the variance from before the first log of all that is gone. */
  private double sinceFirstLog(int p) {
    double share = belief.spread(p) / prior.parameters().get(p).spread();
    return 1 - share * share;
  }

  /**
   * Those among the cooker's numbers and one log's own. Numbers of two logs are left apart: their
   * combinations are the cooker's, shared out by chance among logs that tell as much.
   */
  private void combinations(List<Finding> findings) {
    List<Parameter> all = prior.parameters().list();
    Set<String> logs = new LinkedHashSet<>();
    all.forEach(one -> logs.add(ParameterWords.log(one.id())));
    Set<String> said = new LinkedHashSet<>();
    for (String log : logs) {
      Parameter[] some =
          all.stream()
              .filter(one -> List.of("", log).contains(ParameterWords.log(one.id())))
              .toArray(Parameter[]::new);
      ParameterSet set = ParameterSet.of(some);
      Prior before = CookerNumbers.part(prior, set);
      Prior after = CookerNumbers.part(belief, set);
      for (MapEstimate.Direction direction : MapEstimate.Direction.between(before, after)) {
        new Lessons(before, after).combination(direction).ifPresent(said::add);
      }
    }
    said.forEach(
        words -> findings.add(Finding.of(Finding.Kind.NOT_TOLD, Finding.Weight.NOTE, words)));
  }

  /** Share of the prior variance that is gone; below 0 where less is known than before. */
  private double contraction(int p) {
    double share = belief.spread(p) / prior.spread(p);
    return 1 - share * share;
  }

  private double middle(Parameter parameter, int p) {
    return parameter.scale().value(belief.mean()[p]);
  }

  private String value(Parameter parameter, int p) {
    return switch (parameter.scale()) {
      case LOGARITHM ->
          String.format(
              Locale.ROOT, "%.2f ± %.0f %%", middle(parameter, p), 100 * belief.spread(p));
      case PLAIN ->
          String.format(
              Locale.ROOT,
              "%s ± %s %s",
              number(middle(parameter, p), parameter),
              number(belief.spread(p), parameter),
              parameter.unit().equals("m") ? "mm" : parameter.unit());
    };
  }

  private static String number(double value, Parameter parameter) {
    return String.format(Locale.ROOT, "%.1f", parameter.unit().equals("m") ? 1000 * value : value);
  }

  /** A combination that is known while its numbers are not. */
  private Optional<String> combination(MapEstimate.Direction direction) {
    List<String> members = new ArrayList<>();
    double most = 0;
    for (int p = 0; p < prior.size(); p++) {
      if (Math.abs(direction.move(p)) >= BELONGS * prior.spread(p)) {
        members.add(name(p));
        most = Math.max(most, contraction(p));
      }
    }
    if (direction.contraction() < KNOWN || members.size() < 2 || most >= KNOWN) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s cannot be told from %s: what they do together is known (%.2f), none of them"
                + " alone (at most %.2f)",
            members.get(0),
            ParameterWords.list(members.subList(1, members.size())),
            direction.contraction(),
            most));
  }

  private String name(int p) {
    String id = prior.parameters().get(p).id();
    String log = ParameterWords.log(id);
    return ParameterWords.of(id) + (log.isEmpty() ? "" : " of " + log);
  }
}
