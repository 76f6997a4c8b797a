// Package point parts the text of one point of a list in what it says of a wire: its cavity's name, its colour and size, where it goes.
//
// It says nothing of a list of points; package point asks it.
package point
