package org.roastfield.lab.files;

import java.util.Arrays;
import java.util.List;

/** The tables of events, spot readings and probe checks of a log package. */
final class PeopleTables {

  static final PeopleTable<LogEvent> EVENTS =
      new PeopleTable<>(
          List.of("time", "until", "kind", "origin", "note"),
          event ->
              List.of(
                  PeopleTable.seconds(event.time()),
                  Double.isNaN(event.end()) ? "" : PeopleTable.seconds(event.end()),
                  event.kind().word(),
                  event.origin().word(),
                  event.note()),
          PeopleTables::event);

  static final PeopleTable<Spot> SPOTS =
      new PeopleTable<>(
          List.of("time", "place", "shown", "note"),
          spot ->
              List.of(
                  PeopleTable.seconds(spot.time()),
                  spot.place(),
                  PeopleTable.celsius(spot.temperature()),
                  spot.note()),
          PeopleTables::spot);

  static final PeopleTable<ProbeCheck> CHECKS =
      new PeopleTable<>(
          List.of("probe", "kind", "shown", "altitude", "note"),
          check ->
              List.of(
                  check.probe(),
                  check.kind().word(),
                  PeopleTable.celsius(check.temperature()),
                  PeopleTable.plain(check.altitude(), 3) + " m",
                  check.note()),
          PeopleTables::check);

  private PeopleTables() {}

  private static LogEvent event(PeopleTable.Row row) {
    double time = row.quantity(0, Dimension.TIME);
    double end = row.quantityOrNaN(1, Dimension.TIME);
    LogEvent.Kind kind =
        LogEvent.kind(row.text(2)).orElseThrow(() -> row.error(2, oneOf(LogEvent.Kind.values())));
    LogEvent.Origin origin =
        LogEvent.origin(row.text(3))
            .orElseThrow(() -> row.error(3, "one of cook, device, inferred"));
    return row.guard(() -> new LogEvent(time, end, kind, origin, row.text(4)));
  }

  private static String oneOf(LogEvent.Kind... kinds) {
    return "one of " + String.join(", ", Arrays.stream(kinds).map(LogEvent.Kind::word).toList());
  }

  private static Spot spot(PeopleTable.Row row) {
    double time = row.quantity(0, Dimension.TIME);
    double shown = row.quantity(2, Dimension.TEMPERATURE);
    return row.guard(() -> new Spot(time, row.text(1), shown, row.text(3)));
  }

  private static ProbeCheck check(PeopleTable.Row row) {
    ProbeCheck.Kind kind =
        Arrays.stream(ProbeCheck.Kind.values())
            .filter(one -> one.word().equals(row.text(1)))
            .findFirst()
            .orElseThrow(() -> row.error(1, "ice-bath or boiling-water"));
    double shown = row.quantity(2, Dimension.TEMPERATURE);
    // Ice melts alike everywhere, boiling water does not.
    double altitude =
        kind == ProbeCheck.Kind.ICE_BATH && row.text(3).isEmpty()
            ? 0
            : row.quantity(3, Dimension.ALTITUDE);
    return row.guard(() -> new ProbeCheck(row.text(0), kind, shown, altitude, row.text(4)));
  }
}
