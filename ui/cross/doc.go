// Package cross makes the cross-section of a branch, as a sheet has it, into what package draw
// shows: where every piece lies, what it is made of, and what the colours tell apart.
package cross
