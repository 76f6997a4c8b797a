// Package planning proposes how a branch could be laid. It runs beside the screen,
// never on the way from a key to the screen.
package planning
