// Package runs is the screens of the bench run: one thing to do at a time, who does it, what was
// measured and tested, and what has changed since.
package runs
