// Package runline parts a line of text that tells one wire by both of its ends, "FC 5V -> GPS VCC (red)", in these and what stands behind
// them.
//
// It says nothing of the lines about it; package block asks it for each.
package runline
