// Package pair says what a twisted pair does to a signal: its characteristic
// impedance, and how long a bus and its stubs may be at a bit rate.
//
// What it does not do. The impedance is that of a pair alone in air: wires beside it,
// a sheath and a shield lower it. Its formula was fitted to pairs twisted far more
// tightly than a harness twists them; at a harness's lay the twist hardly matters.
// Lengths are what makers of bus interfaces state; they differ, and say nothing of a
// particular transceiver. All of it is advice.
package pair
