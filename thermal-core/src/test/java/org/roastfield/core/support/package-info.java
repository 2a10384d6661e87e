/** Cooks that the tests of several packages compute. */
@NullMarked
package org.roastfield.core.support;

import org.jspecify.annotations.NullMarked;
