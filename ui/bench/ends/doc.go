// Package ends is the screens on which a connector is chosen: by its face, or by what must go into
// it.
//
// ChooseInsert opens the list of arrangements for whoever wants one; WhichRow leads from a termination
// to the arrangements that take its wires.
package ends
