package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.inference.EvidencePart;
import org.roastfield.core.inference.ObservedCook;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.lab.cooker.CookerLogs;

/**
 * Where the readings of one log stand in the evidence of all.
 *
 * @param size of all the evidence
 * @param firstReading row of its first reading
 * @param times of its readings [s], trace after trace
 * @param firstNumber row of its first single reading
 * @param numbers how many of these
 * @param part which series and single readings are its own
 */
record LogPlace(
    int size,
    int firstReading,
    List<Double> times,
    int firstNumber,
    int numbers,
    EvidencePart part) {

  static LogPlace of(CookerLogs logs, int log) {
    int reading = 0;
    int number = 0;
    int trace = 0;
    int readings = 0;
    int numbers = 0;
    int traces = 0;
    for (int i = 0; i < logs.observed().size(); i++) {
      ObservedCook cook = logs.observed().get(i);
      if (i == log) {
        reading = readings;
        number = numbers;
        trace = traces;
      }
      readings += cook.traces().stream().mapToInt(one -> one.readings().size()).sum();
      numbers += cook.numbers().size();
      traces += cook.traces().size();
    }
    ObservedCook own = logs.observed().get(log);
    return new LogPlace(
        readings + numbers,
        reading,
        times(own),
        readings + number,
        own.numbers().size(),
        new EvidencePart(range(trace, own.traces().size()), range(number, own.numbers().size())));
  }

  private static List<Double> times(ObservedCook cook) {
    List<Double> times = new ArrayList<>();
    for (ObservedTrace trace : cook.traces()) {
      for (int k = 0; k < trace.readings().size(); k++) {
        times.add(trace.readings().time(k));
      }
    }
    return times;
  }

  private static List<Integer> range(int from, int count) {
    List<Integer> range = new ArrayList<>();
    for (int i = from; i < from + count; i++) {
      range.add(i);
    }
    return range;
  }

  /** A column of all the evidence from the log's own readings and single readings. */
  double[] column(double[] own) {
    double[] column = new double[size];
    System.arraycopy(own, 0, column, firstReading, times.size());
    System.arraycopy(own, times.size(), column, firstNumber, numbers);
    return column;
  }

  /** A column whose readings before a time [s], and single readings, are 0. */
  double[] from(double time, double[] column) {
    double[] late = new double[size];
    for (int k = 0; k < times.size(); k++) {
      late[firstReading + k] = times.get(k) >= time ? column[firstReading + k] : 0;
    }
    return late;
  }
}
