// Package join makes the harness of what the rows of all lists said: wires out of the
// cavities of several tables, splices, units, feeds, terminations, branches. Then it holds
// the whole against itself and says what was made.
//
// Its words:
//
//   - net: the cavities of one name; two of them are a wire, more meet on a splice.
//   - group: the wires of one cable, before their unit is made.
//   - drain: the bare lead that takes a shield to ground; it is a fact about a unit, no wire.
//   - stand-in: the length of a branch that no list gives. Its name says so.
//   - fact: one line of the report about what was made.
//
// The steps run in the order that package wirelist calls them, and each needs those before.
//
// It reads no cell, and it does not judge whether the harness can be built.
package join
