package org.roastfield.core.parameter;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.internal.Check;

/** Names in an order, found again without a search. Immutable. */
final class Names {

  private final List<String> list;
  private final Map<String, Integer> indices = new HashMap<>();

  /**
   * @param what they name, for errors
   * @throws IllegalArgumentException if a name is blank or there twice
   */
  Names(String what, List<String> names) {
    list = List.copyOf(names);
    for (String name : list) {
      if (indices.putIfAbsent(Check.notBlank(what, name), indices.size()) != null) {
        throw new IllegalArgumentException(what + " must be unique, was \"" + name + "\"");
      }
    }
  }

  List<String> list() {
    return list;
  }

  int size() {
    return list.size();
  }

  boolean has(String name) {
    return indices.containsKey(name);
  }

  /**
   * Index of a name from 0.
   *
   * @throws IllegalArgumentException if it is not there
   */
  int index(String what, String name) {
    @Nullable Integer index = indices.get(name);
    if (index == null) {
      throw new IllegalArgumentException(
          what + " must be one of " + list + ", was \"" + name + "\"");
    }
    return index;
  }
}
