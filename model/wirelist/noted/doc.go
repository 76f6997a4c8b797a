// Package noted writes the lines of notes as the other packages read them: a fitter's list of things to do, a note on a phone, a mail.
// Each habit is in a file of its own, and looks at all lines of a text before it touches one.
//
// It parts no line in cells; packages jotted, runline and alike do.
package noted
