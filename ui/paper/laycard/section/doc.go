// Package section draws the section of a bundle for a lay card: the bundle so far, in mm of paper,
// with the numbers of the pieces in hand so large that they are read at arm's length.
//
// A number stands inside its disc where the disc has room for it; else outside, at the end of a
// leader. The picture is as large as its smallest number needs, within the limits it is given. What
// is not in hand is a grey outline without a number. Everything is black, white and grey: a spare
// is dashed, a filler grey, a piece that is made up first has a heavy line, and the second ring of
// a tracer is open where the number stands.
//
// Of lays the picture out and is pure; SVG writes it. It knows no harness.
package section
