// Package adding makes things at the bench: a first connector, a trunk, devices with their wires
// and legs, spares, and what is proposed written in. Each way shows what it makes before it is
// taken, and one undo takes all of it back.
package adding
