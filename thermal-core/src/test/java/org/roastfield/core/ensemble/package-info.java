@NullMarked
package org.roastfield.core.ensemble;

import org.jspecify.annotations.NullMarked;
