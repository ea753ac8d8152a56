/**
 * What a comparison says, in plain sentences: which regime does best by which figure and how
 * surely, and the dated chain of events behind it. Words only; terminal and report print them.
 */
package longbough.runner.verdict;
