// Package heat says how warm each wire of a bundle gets: the steady balance of what
// the currents make and what still air takes away, wire by wire on the section as it
// is laid.
//
// Words. A section is discs inside a circle: wires, fillers, and jackets that hold
// wires of their own; round them a sheath, in sectors. What each slice of a disc's surface
// gives to the disc nearest to it, or to the sheath, is known in closed form; in the
// insulation heat also runs round to where it leaves best, and so it does in the sheath;
// from the surface it goes by natural convection and radiation, one coefficient all round.
// Every conductor is of one temperature. Nothing in it is fitted.
//
// What it is good for. A single wire comes within 7 % of the published free-air points
// of AC 43.13-1B on the safe side. Against a solution by finite volumes over the real
// circles (package heattest) a loaded conductor is at most 4 % of its rise too low and 8 %
// too high. A dense bundle allows 7 to 36 % more than AC 43.13-1B table 11-9 (the tests
// reproduce the comparison), part of it the whole-ampere steps of that table, part its
// altitude curve. Hence a margin on the current. It is an estimate in still air for a
// bundle that hangs free and level; it knows no draught, no hot engine nearby that
// radiates, no time, no vacuum, and no heat along the wires.
package heat
