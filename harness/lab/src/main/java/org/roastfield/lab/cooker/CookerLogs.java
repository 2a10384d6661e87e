package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.ObservedCook;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.simulation.Simulator;

/**
 * Logs of one cooker as one calibration: its own numbers are common to all of them, those of cuts
 * and probes belong to each. Immutable.
 *
 * @param cases logged cooks
 * @param parameters the cooker's, then those of each case, called "ID/NAME-OF-THE-LOG"
 * @param observed the cases over these parameters
 */
public record CookerLogs(
    List<LoggedCase> cases, ParameterSet parameters, List<ObservedCook> observed) {

  /** Copies the lists. */
  public CookerLogs {
    cases = List.copyOf(cases);
    observed = List.copyOf(observed);
  }

  /**
   * Logs together.
   *
   * @param cases at least one, each with another name
   * @param free which of their parameters are to be found; the others stay as the files state them
   * @throws IllegalArgumentException if there is no case, two have one name, or nothing is free
   */
  public static CookerLogs of(List<LoggedCase> cases, Predicate<Parameter> free) {
    return of(cases, free, ParameterSet.empty());
  }

  /**
   * The same for a cooker of which something is known.
   *
   * @param known parameters of the cooker that are there whether a log has them or not
   */
  static CookerLogs of(List<LoggedCase> cases, Predicate<Parameter> free, ParameterSet known) {
    Set<String> names = new HashSet<>();
    ParameterSet all = known;
    for (LoggedCase one : cases) {
      if (!names.add(one.name())) {
        throw new IllegalArgumentException("names of logs must be unique, twice " + one.name());
      }
      for (Parameter parameter : one.parameters().of(Owner.COOKER).list()) {
        all = free.test(parameter) && !all.has(parameter.id()) ? all.with(parameter) : all;
      }
    }
    List<ObservedCook> observed = new ArrayList<>();
    for (LoggedCase one : cases) {
      List<String> own = new ArrayList<>();
      List<String> ids = new ArrayList<>();
      for (Parameter parameter : one.parameters().list()) {
        if (free.test(parameter)) {
          String id = id(parameter, one.name());
          own.add(parameter.id());
          ids.add(id);
          all = all.has(id) ? all : all.with(parameter.called(id));
        }
      }
      observed.add(new ObservedCook(one.name(), own, ids, one.cook(), one.traces(), one.numbers()));
    }
    if (all.size() == 0) {
      throw new IllegalArgumentException("at least one parameter of the logs must be free");
    }
    return new CookerLogs(cases, all, observed);
  }

  /**
   * The same logs, asking before each of their cooks is built, here and in all that is made of
   * them.
   *
   * @param check may throw to stop what is computed, but no {@link IllegalArgumentException}
   */
  CookerLogs asking(Runnable check) {
    List<ObservedCook> asking = new ArrayList<>();
    for (ObservedCook one : observed) {
      asking.add(
          new ObservedCook(
              one.name(),
              one.own(),
              one.ids(),
              point -> {
                check.run();
                return one.cooks().apply(point);
              },
              one.traces(),
              one.numbers()));
    }
    return new CookerLogs(cases, parameters, asking);
  }

  /** Id in a calibration of a parameter of a log. */
  public static String id(Parameter parameter, String log) {
    return parameter.owner() == Owner.COOKER ? parameter.id() : parameter.id() + "/" + log;
  }

  /** What computed cooks say of the evidence. */
  public CookModel model(Simulator simulator) {
    return CookModel.of(parameters, observed, simulator);
  }
}
