// Package heat says how warm the wires of a bundle get: the steady balance of what
// the currents make and what still air takes away.
//
// Words. A bundle is shells, from the axis outward: the centre and each layer, with
// the heat its wires make in a metre. Heat goes from shell to shell through wires,
// insulation and the air between them, as if all of that were one material of an
// effective conductivity; through the sheath; and from the surface by natural
// convection and radiation. A wire's conductor is as warm as the inner face of its
// shell, and warmer by what it makes more than its neighbours.
//
// What it is good for. A single wire comes within 6 % of the published free-air
// points of AC 43.13-1B on the safe side. A dense bundle comes out some 10 to 20 %
// too favourable against AC 43.13-1B table 11-9 (8 to 39 % by cell; the tests
// reproduce the comparison), part of it the whole-ampere steps of that table, part
// its altitude curve. Hence a margin on the current. It is an estimate in still air
// for a bundle that hangs free and level; it knows no draught, no hot engine beside
// it that radiates, no time, no vacuum.
package heat
