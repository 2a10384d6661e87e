/** Results and the manifest of a run as files, written whole or not at all. */
@NullMarked
package org.roastfield.lab.result;

import org.jspecify.annotations.NullMarked;
