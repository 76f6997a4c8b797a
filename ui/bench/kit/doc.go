// Package kit holds the widgets of the bench: the frame, fields, the bar of keys,
// what is scrolled, a bar of progress, the choice of a file, columns.
//
// Each is a pure function of data, size and Theme, or a small value that is changed
// by keys alone. Nothing here reads a clock, the environment, a disk or the terminal:
// what the terminal can show comes in as a draw.Palette. Nothing here knows a harness.
//
// Words used in this package:
//
//   - look: one of the few ways text may look; a Theme turns it into colours
//   - sign: a character that says what colour repeats: in hand, in use, more below
//   - pane: a framed part of the screen with its title in the border
//   - foot: the lines under the panes; the last of them is the bar
//
// Colour never says anything alone. Every widget is complete without it and in plain
// characters, with the same words in the same places.
package kit
