// Package plugwires tells the wires of a plug, of which a list gives the colours and no cavities, from the colours of lamps, of
// paint, of teams.
package plugwires
