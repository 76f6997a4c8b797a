// Package several is the screens on which several wires are made or changed in one go: the wires
// of a branch or of a connector, of which some are marked; what can be done with the marked ones;
// and wires from a free cavity on.
package several
