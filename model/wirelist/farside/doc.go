// Package farside finds what the tables of two devices say of one wire, each from its side.
//
// Its words:
//
//   - far side: the device that a table of cavities says its wires go to.
//   - back: a row of the table there that says it goes to a cavity here.
//
// It joins what both sides say and nothing that one of them says alone, and tells a device from the plug of its lead that is called as it
// is; package join makes the wires.
package farside
