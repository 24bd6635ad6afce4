/** From results to pictures: the same picture for the command line, the desktop and the reports. */
@NullMarked
package io.github.tapwright.report.picture;

import org.jspecify.annotations.NullMarked;
