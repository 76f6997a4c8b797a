// Package screen writes the frames of a full-screen program to a terminal: a frame
// as soon as it is made, of a frame only the runs of cells that changed, and nothing at
// all while nothing changes.
//
// The terminal library draws on a clock. To answer a key within a frame of 120 a
// second its clock has to wake that often, and a program that only waits then takes
// two per cent of a processor. Here a frame goes out at once, and frames that follow
// each other faster than an eye can see are folded into one.
//
// It knows no keys and no sizes but the width a line may fill. A line may carry colours,
// written by lipgloss or by the canvas of contralay/ui/draw, and nothing that moves the
// cursor: that is written here alone.
package screen
