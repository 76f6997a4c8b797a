// Package arrow reads short texts that a wire is told in, with an arrow between its two ends, and the titles above them that name two
// devices.
//
// It says nothing of a table; package block asks it.
package arrow
