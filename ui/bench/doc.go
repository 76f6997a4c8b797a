// Package bench is the program at the harness board: five steps of a branch, the
// section beside them, every figure renewed at each key.
//
// A screen is a page: a few lines and rows to choose from. Rows carry what they
// do for Enter, for + and −, and for digits; the key table (keys.go) carries the
// rest, and drives dispatch, the bar at the bottom and the help. A new screen is
// one file with one function that returns a page.
//
// Update and View are pure but for Config, which holds the few things a bench
// does to the world. The harness is a value: undo is the one before.
package bench
