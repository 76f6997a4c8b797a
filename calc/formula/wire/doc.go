// Package wire holds what follows from the size of a wire alone: diameters and
// cross-sections of the American wire gauge, stranded copper, resistance and
// voltage drop, the mass of an insulated wire, and the figures of a unit (a
// pair, triple or quad made up before it is laid).
//
// Words. A strand is one of the bare wires a conductor is made of; the area is
// that of copper, in mm². AWG sizes larger than 0 are 1/0 … 4/0, the numbers
// 0 … −3. The lay loss of a unit is the length of its wires ÷ its own length.
//
// A function that may have no answer (a size outside the gauge, a length below
// zero, a result too large for a number) returns false beside a zero; nothing
// here returns NaN or an infinity.
//
// What it does not do: it knows no catalogue. A finished diameter, a maximum
// resistance or a mass that a specification prints is better than what is
// computed here. It knows no current limits either.
package wire
