/**
 * Can these sounds be told apart by ear? Sounds are made equally loud and equally long, played without saying which is
 * which, and the number of right answers is held against what guessing brings. See docs/methods/listening.md.
 */
@NullMarked
package io.github.tapwright.comparison.listening;

import org.jspecify.annotations.NullMarked;
