// Package face draws the face of a connector for paper: the rear of its insert, where the wires go in,
// with the number of its wire in each cavity.
//
// It shows where a cavity lies, and is not to scale: the catalogue has the places of cavities as a chart
// draws them. Which side is seen is settled before, by catalogue.Face.Seen. The key stands at the top.
// No lettering is under 9 pt. A number that has no room in its cavity is left to the list beside the
// face, and the cavity shows its letter alone; a small letter is underlined, so that a and A, j and J
// cannot be mistaken for each other.
package face
