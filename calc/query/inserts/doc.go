// Package inserts answers which connector takes what must go in: every arrangement of the
// catalogue that has a contact for each wire, small shells first.
//
// Words used here:
//
//   - kind: wires that are alike to a contact: one gauge and one diameter
//   - takes: the conductor is neither too thick nor too thin for the barrel, and the wire is
//     within the seal
//   - close: the barrel takes it, but the wire is outside a seal, the range or the wire's diameter
//     being from memory. Such an arrangement is shown after all others, because check only warns of it
//
// A drain takes a cavity like a wire of its unit's gauge; it has no seal to suit. A spare is like
// the wire that is asked for most. Which current a contact carries is not asked here.
package inserts
