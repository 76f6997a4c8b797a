// Package missing finds what a harness still needs before its sheet can be built: what nobody has
// given yet, worst first, like things on one line. What is given and wrong is an open point of the
// sheet, and is not said here again.
package missing
