// Package meter sets on paper what a meter tests: that each net rings, once and with a limit that a shop can
// read, that insulation keeps the nets apart, and what each feed drops under load. The same rows are made
// into files, as blank forms.
package meter
