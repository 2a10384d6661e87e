package org.roastfield.lab.cooker;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.inference.ChamberTrace;
import org.roastfield.core.inference.ObservedNumber;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.LogPackage;

/**
 * A logged cook as evidence.
 *
 * @param name of the log: of the cooks of one calibration each has another
 * @param cook as a function of its numbers
 * @param parameters of the cook with their priors; those of probes that were checked are narrower
 * @param traces of the probes
 * @param numbers read once
 * @param isWeighed whether a weight before is among them, which tells of the size
 * @param chamber air of the gentle heat, if it was logged
 * @param assumptions what was taken from where and what was left out, in words
 */
public record LoggedCase(
    String name,
    VariedCook cook,
    ParameterSet parameters,
    List<ObservedTrace> traces,
    List<ObservedNumber> numbers,
    boolean isWeighed,
    Optional<ChamberTrace> chamber,
    List<String> assumptions) {

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if nothing was measured
   */
  public LoggedCase {
    traces = List.copyOf(traces);
    numbers = List.copyOf(numbers);
    assumptions = List.copyOf(assumptions);
    if (traces.isEmpty() && numbers.isEmpty()) {
      throw new IllegalArgumentException(
          "log " + name + " must have a reading of the cut to compare with, had none");
    }
  }

  /** The same with other priors of the same parameters. */
  LoggedCase with(ParameterSet priors) {
    return new LoggedCase(name, cook, priors, traces, numbers, isWeighed, chamber, assumptions);
  }

  /** Name of the weight before among the numbers. */
  public String weightName() {
    return weightName(name);
  }

  static String weightName(String log) {
    return "weight of " + log + " over that of its stated sizes";
  }

  /**
   * A case of a package.
   *
   * @param file of the cook, the package's own or another
   * @param probe that the core readings are from, if the file leaves that open
   * @throws IllegalArgumentException if there is nothing to compare with, or it is not clear which
   *     probe logged the core
   */
  public static LoggedCase of(CookFile file, LogPackage log, LogSpan span, Optional<String> probe) {
    return new CaseReader(file, log, span, probe).read();
  }
}
